package org.moultwright.ui.climate;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** One probe in the list. */
final class ProbeCell extends ListCell<ProbeRow> {
    private final ClimateViewModel model;

    ProbeCell(ClimateViewModel model) {
        this.model = model;
        getStyleClass().add("probe-cell");
        setPrefWidth(0);
    }

    @Override
    protected void updateItem(ProbeRow probe, boolean empty) {
        super.updateItem(probe, empty);
        setAccessibleText(empty ? "" : probe.spoken());
        if (empty) {
            setGraphic(null);
            return;
        }
        Label reading =
                fixed(probe.tone() == Tone.OK ? Words.strong(probe.reading()) : Words.muted(probe.reading()), 5.4);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox row = new HBox(
                Swatch.dot(probe.tone()),
                fixed(Words.strong(probe.probe()), 5),
                fixed(Words.muted(probe.place()), 9),
                reading,
                fixed(Words.muted(probe.age()), 8.5),
                Words.muted(probe.wire()),
                gap);
        if (model.isConnected(probe.probe())) {
            Button disconnect = Buttons.plain("Disconnect", () -> model.disconnect(probe.probe()));
            row.getChildren().add(disconnect);
        }
        row.getStyleClass().add("story-row");
        setGraphic(row);
    }

    private static Label fixed(Label label, double ems) {
        label.setStyle("-fx-min-width: %sem; -fx-pref-width: %sem; -fx-max-width: %sem;".formatted(ems, ems, ems));
        return label;
    }
}
