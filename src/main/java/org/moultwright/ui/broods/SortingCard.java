package org.moultwright.ui.broods;

import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.StageChip;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.OpenSac.Aside;

/** What was in a sac: the good ones counted by stage or weighed, what is put aside, and the sum. */
final class SortingCard extends VBox {
    private final OpeningForm form;
    private final FormInputs inputs;

    SortingCard(OpeningForm form, FormInputs inputs) {
        this.form = form;
        this.inputs = inputs;
        getStyleClass().addAll("card", "sorting-card");
        Label sum = Words.wrapped(Words.strong(""));
        sum.textProperty().bind(form.sumProperty());
        VBox fields = new VBox(good(), weighing(), aside());
        fields.getStyleClass().add("sorting-fields");
        Scrolled scrolled = new Scrolled(fields);
        setVgrow(scrolled, Priority.ALWAYS);
        getChildren().addAll(head(), scrolled, sum);
    }

    private Node head() {
        ToggleChip counted = new ToggleChip(Texts.say("counted"));
        ToggleChip weighed = new ToggleChip(Texts.say("weighed"));
        ChoiceGroup<Boolean> group = new ChoiceGroup<>(
                form.weighing().onProperty().asObject(), form.weighing().onProperty()::set);
        group.add(counted, false);
        group.add(weighed, true);
        counted.getStyleClass().add("small-chip");
        weighed.getStyleClass().add("small-chip");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Flow head = new Flow(Words.cardTitle(Texts.say("The good ones")), gap, counted, weighed);
        head.getStyleClass().add("card-head");
        return head;
    }

    private Node good() {
        GridPane grid = SacFormView.grid();
        form.contents()
                .good()
                .forEach((stage, field) -> grid.addRow(
                        grid.getRowCount(), new StageChip(stage, form.stageWord(stage)), inputs.animals(field)));
        return onlyWhile(grid, form.weighing().onProperty().map(on -> !on));
    }

    private Node weighing() {
        WeighedSamples weighing = form.weighing();
        Flow stages = new Flow();
        stages.getStyleClass().add("span-chips");
        ChoiceGroup<Stage> group = new ChoiceGroup<>(weighing.stageProperty(), weighing.stageProperty()::set);
        SacContents.STAGES.forEach(stage -> {
            ToggleChip chip = new ToggleChip(form.stageWord(stage));
            chip.getStyleClass().add("small-chip");
            group.add(chip, stage);
            stages.getChildren().add(chip);
        });
        GridPane grid = SacFormView.grid();
        grid.addRow(
                0,
                Words.caption(Texts.say("sample")),
                Words.caption(Texts.say("counted")),
                Words.caption(Texts.say("grams")));
        List<WeighedSamples.Sample> samples = weighing.samples();
        for (int i = 0; i < samples.size(); i++) {
            grid.addRow(
                    i + 1,
                    Words.plain(Integer.toString(i + 1)),
                    inputs.animals(samples.get(i).count()),
                    inputs.grams(samples.get(i).grams()));
        }
        grid.add(Words.plain(Texts.say("All together")), 0, samples.size() + 1, 2, 1);
        grid.add(inputs.grams(weighing.whole()), 2, samples.size() + 1);
        Label estimate = Words.styled("", "estimate");
        estimate.textProperty().bind(form.estimateProperty());
        onlyWhile(estimate, form.estimateProperty().map(words -> !words.isEmpty()));
        Label note = Words.wrapped(Words.caption(""));
        note.textProperty().bind(form.estimateNoteProperty());
        VBox all = new VBox(stages, grid, estimate, note);
        all.getStyleClass().add("lines");
        return onlyWhile(all, weighing.onProperty().asObject());
    }

    private Node aside() {
        Flow fields = new Flow();
        fields.getStyleClass().add("form-row");
        form.contents().aside().forEach((what, field) -> fields.getChildren().add(named(word(what), field)));
        fields.getChildren().add(named(Texts.say("In all"), form.contents().inAll()));
        VBox all = new VBox(
                Words.cardTitle(Texts.say("Put aside")),
                fields,
                onlyWhile(
                        Words.wrapped(Words.caption(Texts.say(
                                "Infertile: yellow, dented, hard. Fused: grown together. Mouldy: fur or spots. In all: "
                                        + "the whole sac counted at one go, if you did."))),
                        form.weighing().onProperty().map(on -> !on)));
        all.getStyleClass().add("lines");
        return all;
    }

    private Node named(String word, FormField field) {
        VBox named = new VBox(Words.caption(word), inputs.animals(field));
        named.getStyleClass().add("named-field");
        return named;
    }

    private static String word(Aside what) {
        return switch (what) {
            case INFERTILE -> Texts.say("Infertile");
            case FUSED -> Texts.say("Fused");
            case MOULDY -> Texts.say("Mouldy");
            case GONE -> Texts.say("Gone");
        };
    }

    private static <T extends Node> T onlyWhile(T node, ObservableValue<Boolean> seen) {
        node.visibleProperty().bind(seen);
        node.managedProperty().bind(node.visibleProperty());
        return node;
    }
}
