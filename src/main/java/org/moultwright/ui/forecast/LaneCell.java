package org.moultwright.ui.forecast;

import javafx.beans.value.ObservableObjectValue;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.ui.chart.LaneChart;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Palette;

/** One tray in the list of lanes. */
final class LaneCell extends ListCell<LaneLine> {
    private final ForecastViewModel model;
    private final Label tray = Words.styled("", "row-title");
    private final Label animals = Words.muted("");
    private final Label phrase = Words.wrapped(Words.plain(""));
    private final LaneChart chart;
    private final HBox row;

    LaneCell(ForecastViewModel model, ObservableObjectValue<Palette> palette) {
        this.model = model;
        this.chart = new LaneChart(palette);
        HBox name = new HBox(tray, animals);
        name.getStyleClass().add("lane-name");
        VBox facts = new VBox(name, phrase);
        facts.getStyleClass().addAll("row-facts", "lane-facts");
        HBox.setHgrow(chart, Priority.ALWAYS);
        row = new HBox(facts, chart);
        row.getStyleClass().add("chart-row");
        getStyleClass().addAll("chart-cell", "lane-cell");
        setPrefWidth(0);
        model.away().absenceProperty().addListener((observed, before, now) -> showLane());
    }

    @Override
    protected void updateItem(LaneLine line, boolean empty) {
        super.updateItem(line, empty);
        setGraphic(empty ? null : row);
        setAccessibleText(empty ? "" : line.sentence());
        if (!empty) {
            tray.setText(line.tray());
            animals.setText(line.animals());
            phrase.setText(line.phrase());
            chart.setAccessibleText(line.sentence());
            showLane();
        }
    }

    private void showLane() {
        if (getItem() != null) {
            chart.shownProperty().set(model.shown(getItem()));
        }
    }
}
