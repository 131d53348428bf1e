package org.moultwright.ui.potting;

import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;

/** Which broods are on the bench, and how many animals of each of their trays go into pots of which size. */
final class TakingCard extends VBox {
    private final PottingViewModel model;
    private final FlowPane broods = new FlowPane();
    private final TakingRows rows;

    TakingCard(PottingViewModel model) {
        this.model = model;
        this.rows = new TakingRows(model);
        broods.getStyleClass().addAll("chips", "tight");
        getStyleClass().add("card");
        getChildren().addAll(Words.cardTitle(Texts.say("Into pots today")), broods, rows);
        InvalidationListener choose = changed -> showBroods();
        model.onBench().choicesProperty().addListener(choose);
        model.onBench().benchProperty().addListener(choose);
        showBroods();
    }

    void focusFirst() {
        rows.focusFirst();
    }

    /** Another size of pots for the tray whose field has the focus; its number is to be typed next. */
    void addSize() {
        rows.addSize();
    }

    /** Whether its rows alone fill a page. */
    boolean isLong() {
        return rows.isLong();
    }

    /** One brood needs no choosing. */
    private void showBroods() {
        List<String> codes = model.onBench().choicesProperty().get();
        broods.setManaged(codes.size() > 1);
        broods.setVisible(codes.size() > 1);
        broods.getChildren().setAll(codes.stream().map(this::chip).toList());
    }

    private ToggleChip chip(String code) {
        ToggleChip chip = new ToggleChip(code);
        chip.setSelected(model.onBench().holds(code));
        chip.setOnAction(event -> {
            model.lay(code, chip.isSelected());
            chip.setSelected(model.onBench().holds(code));
        });
        return chip;
    }
}
