package org.moultwright.ui.potting;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;

/** Which brood is at the bench, and how many animals are taken from each of its trays. */
final class TakingCard extends VBox {
    private final PottingViewModel model;
    private final FlowPane broods = new FlowPane();
    private final GridPane trays = new GridPane();
    private final List<NumberField> fields = new ArrayList<>();

    TakingCard(PottingViewModel model) {
        this.model = model;
        broods.getStyleClass().addAll("chips", "tight");
        trays.getStyleClass().add("bench-grid");
        getStyleClass().add("card");
        getChildren().addAll(Words.cardTitle(Texts.say("Into pots today")), broods, trays);
        InvalidationListener choose = changed -> showBroods();
        model.choicesProperty().addListener(choose);
        model.benchProperty().addListener(choose);
        model.benchProperty().addListener((observed, before, now) -> showTrays());
        showBroods();
        showTrays();
    }

    void focusFirst() {
        fields.stream().findFirst().ifPresent(field -> {
            field.input().requestFocus();
            field.input().selectAll();
        });
    }

    /** One brood needs no choosing. */
    private void showBroods() {
        List<String> codes = model.choicesProperty().get();
        broods.setManaged(codes.size() > 1);
        broods.setVisible(codes.size() > 1);
        String open =
                model.benchProperty().get().map(bench -> bench.brood().code()).orElse("");
        broods.getChildren()
                .setAll(codes.stream()
                        .map(code -> chip(code, code.equals(open)))
                        .toList());
    }

    private ToggleChip chip(String code, boolean isOpen) {
        ToggleChip chip = new ToggleChip(code);
        chip.setSelected(isOpen);
        chip.setOnAction(event -> {
            chip.setSelected(true);
            model.open(code);
        });
        return chip;
    }

    private void showTrays() {
        trays.getChildren().clear();
        fields.clear();
        model.benchProperty().get().ifPresent(bench -> {
            for (int i = 0; i < bench.takings().size(); i++) {
                addTray(bench, bench.takings().get(i), 2 * i);
            }
        });
    }

    private void addTray(Bench bench, Taking taking, int line) {
        Region hairline = new Region();
        hairline.getStyleClass().add("hairline");
        trays.add(hairline, 0, line, 6, 1);
        Vocabulary names = model.vocabularyProperty().get();
        String tray = taking.tray().tray();
        Label stay = Words.wrapped(Words.muted(""));
        stay.setMaxWidth(Double.MAX_VALUE);
        GridPane.setHgrow(stay, Priority.ALWAYS);
        Runnable tell = () -> stay.setText(PottingWords.stay(taking, bench.stage(), names, model.days()));
        taking.takenProperty().addListener((observed, before, now) -> tell.run());
        tell.run();
        NumberField taken = new NumberField(Texts.say("taken from {0}", tray));
        taken.valueProperty().bindBidirectional(taking.takenProperty());
        taken.problemProperty().bind(taking.problemProperty());
        fields.add(taken);
        EntryField size = FormFields.quiet(
                new EntryField(Texts.say("pot size for {0}", tray), LabelCard.POT_SIZE), "number-field");
        size.textProperty().bindBidirectional(taking.potSizeProperty());
        size.input()
                .promptTextProperty()
                .bind(model.potSizeProperty().map(ofAll -> ofAll.isBlank() ? Texts.say("size") : ofAll));
        Node ready = taking.ready() > 0
                ? Words.whole(Words.plain(PottingWords.ready(taking, names, bench.stage())))
                : Words.whole(Words.muted(PottingWords.ready(taking, names, bench.stage())));
        trays.addRow(
                line + 1,
                Words.whole(Words.styled(tray, "tray-code")),
                Words.whole(Words.muted(taking.tray().place())),
                ready,
                taken,
                size,
                stay);
    }
}
