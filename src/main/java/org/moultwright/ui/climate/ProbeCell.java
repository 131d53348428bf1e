package org.moultwright.ui.climate;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.moultwright.domain.HandReading;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** One probe in the list. */
final class ProbeCell extends ListCell<ProbeRow> {
    private static final double STALE_OPACITY = 0.6;

    private final ClimateViewModel model;
    private final HBox dot = new HBox();
    private final Label probe = fixed(Words.strong(""), 5);
    private final Label place = fixed(Words.muted(""), 9);
    private final Label reading = fixed(Words.strong(""), 5.4);
    private final Label age = fixed(Words.muted(""), 8.5);
    private final Label wire = Words.muted("");
    private final Button disconnect = Buttons.plain(Texts.say("Disconnect"), this::disconnect);
    private final Flow row;

    ProbeCell(ClimateViewModel model) {
        this.model = model;
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        dot.setAlignment(Pos.CENTER);
        dot.setMinWidth(USE_PREF_SIZE);
        row = new Flow(dot, probe, place, reading, age, wire, gap, disconnect);
        row.getStyleClass().add("story-row");
        disconnect.managedProperty().bind(disconnect.visibleProperty());
        getStyleClass().add("probe-cell");
        setPrefWidth(0);
    }

    @Override
    protected void updateItem(ProbeRow shown, boolean empty) {
        super.updateItem(shown, empty);
        setAccessibleText(empty ? "" : shown.spoken());
        setGraphic(empty ? null : row);
        if (empty) {
            return;
        }
        dot.getChildren().setAll(Swatch.dot(shown.tone()));
        probe.setText(HandReading.isByHand(shown.probe()) ? Texts.say("by hand") : shown.probe());
        place.setText(shown.place());
        reading.setText(shown.reading());
        reading.setOpacity(shown.tone() == Tone.OK ? 1 : STALE_OPACITY);
        age.setText(shown.age());
        wire.setText(shown.wire());
        disconnect.setVisible(model.isConnected(shown.probe()));
    }

    private void disconnect() {
        if (getItem() != null) {
            model.disconnect(getItem().probe());
        }
    }

    private static Label fixed(Label label, double ems) {
        label.setStyle("-fx-min-width: %sem; -fx-pref-width: %sem; -fx-max-width: %sem;".formatted(ems, ems, ems));
        return label;
    }
}
