package org.moultwright.ui.broods;

import java.util.Optional;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.chart.RibbonChart;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Palette;

/** One brood in the list: its words, its ribbon, its yield. */
final class BroodCell extends ListCell<BroodLine> {
    private final BroodsViewModel model;
    private final Label code = Words.styled("", "row-title");
    private final Label alive = Words.plain("");
    private final Label stages = Words.muted("");
    private final Label next = Words.styled("", "strong", "accent");
    private final Label yieldWord = Words.plain(Texts.say("yield"));
    private final Label yield = Words.strong("");
    private final RibbonChart ribbon;
    private final HBox row;

    BroodCell(BroodsViewModel model, ObservableObjectValue<Palette> palette) {
        this.model = model;
        this.ribbon = new RibbonChart(palette);
        VBox facts = new VBox(code, alive, stages, next);
        facts.getStyleClass().addAll("row-facts", "brood-facts");
        VBox outcome = new VBox(yieldWord, yield);
        outcome.getStyleClass().addAll("row-facts", "brood-outcome");
        HBox.setHgrow(ribbon, Priority.ALWAYS);
        row = new HBox(facts, ribbon, outcome);
        row.getStyleClass().add("chart-row");
        getStyleClass().add("chart-cell");
        setPrefWidth(0);
        ribbon.hoverProperty().addListener((observed, before, now) -> readDay());
        ribbon.readingProperty().addListener((observed, before, now) -> readDay());
        model.readingProperty().addListener((observed, before, now) -> followKeys());
        selectedProperty().addListener((observed, before, now) -> followKeys());
    }

    @Override
    protected void updateItem(BroodLine line, boolean empty) {
        super.updateItem(line, empty);
        setGraphic(empty ? null : row);
        setAccessibleText(empty ? "" : line.spoken());
        if (empty) {
            return;
        }
        code.setText(line.code());
        alive.setText(line.alive());
        stages.setText(line.stages());
        next.setText(line.next());
        yield.setText(line.yield());
        yieldWord.setVisible(!line.yield().isEmpty());
        ribbon.setAccessibleText(line.spoken());
        ribbon.shownProperty().set(model.shown(line));
        followKeys();
    }

    private void readDay() {
        if (ribbon.isHover() && getItem() != null) {
            model.readDay(getItem(), ribbon.readingProperty().get());
        }
    }

    private void followKeys() {
        if (!ribbon.isHover()) {
            ribbon.readingProperty().set(isSelected() ? model.readingProperty().get() : Optional.empty());
        }
    }
}
