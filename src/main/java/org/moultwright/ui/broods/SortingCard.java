package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.EntryRow;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.FormFields;
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
        Flow head = new Flow(Words.cardTitle(Texts.say("The good ones")), gap(), counted, weighed);
        head.getStyleClass().add("card-head");
        return head;
    }

    private Node good() {
        VBox rows = rows();
        form.contents()
                .good()
                .forEach((stage, field) -> rows.getChildren()
                        .add(row(new StageChip(stage, form.stageWord(stage)), inputs.animals(field))));
        return onlyWhile(rows, form.weighing().onProperty().map(on -> !on));
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
        VBox rows = rows();
        rows.getChildren()
                .add(line(
                        Words.caption(Texts.say("sample")),
                        heading(Texts.say("counted")),
                        heading(Texts.say("grams"))));
        List<WeighedSamples.Sample> samples = weighing.samples();
        for (int i = 0; i < samples.size(); i++) {
            rows.getChildren()
                    .add(row(
                            Words.plain(Integer.toString(i + 1)),
                            inputs.animals(samples.get(i).count()),
                            inputs.grams(samples.get(i).grams())));
        }
        rows.getChildren().add(row(Words.plain(Texts.say("All together")), inputs.grams(weighing.whole())));
        Label estimate = Words.styled("", "estimate");
        estimate.textProperty().bind(form.estimateProperty());
        onlyWhile(estimate, form.estimateProperty().map(words -> !words.isEmpty()));
        Label note = Words.wrapped(Words.caption(""));
        note.textProperty().bind(form.estimateNoteProperty());
        VBox all = new VBox(stages, rows, estimate, note);
        all.getStyleClass().add("lines");
        return onlyWhile(all, weighing.onProperty().asObject());
    }

    private Node aside() {
        Flow named = new Flow();
        named.getStyleClass().add("form-row");
        List<EntryField> fields = new ArrayList<>();
        BiConsumer<String, FormField> add = (word, field) -> {
            EntryField entry = inputs.animals(field);
            fields.add(entry);
            named.getChildren().add(FormFields.field(word, entry));
        };
        form.contents().aside().forEach((what, field) -> add.accept(word(what), field));
        add.accept(Texts.say("In all"), form.contents().inAll());
        VBox all = new VBox(
                Words.cardTitle(Texts.say("Put aside")),
                new EntryRow(named, fields.toArray(EntryField[]::new)),
                onlyWhile(
                        Words.wrapped(Words.caption(Texts.say(
                                "Infertile: yellow, dented, hard. Fused: grown together. Mouldy: fur or spots. In all: "
                                        + "the whole sac counted at one go, if you did."))),
                        form.weighing().onProperty().map(on -> !on)));
        all.getStyleClass().add("lines");
        return all;
    }

    private static VBox rows() {
        VBox rows = new VBox();
        rows.getStyleClass().add("sorting-rows");
        return rows;
    }

    /** A word and its fields, and beneath them what is wrong. */
    private static Node row(Node word, EntryField... fields) {
        return new EntryRow(line(word, fields), fields);
    }

    /** A word, and at the right what stands one beneath the other in all rows. */
    private static Node line(Node word, Node... columns) {
        Flow line = new Flow(word, gap());
        line.getChildren().addAll(columns);
        line.getStyleClass().add("outcome-row");
        return line;
    }

    /** A word as wide as the fields beneath it. */
    private static Node heading(String word) {
        VBox head = new VBox(Words.caption(word));
        head.getStyleClass().add("number-field");
        return head;
    }

    private static Region gap() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        return gap;
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
