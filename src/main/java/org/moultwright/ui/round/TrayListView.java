package org.moultwright.ui.round;

import javafx.beans.InvalidationListener;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Words;

/** The trays of the round in shelf order, with what is done and what is late; the open one is always in sight. */
final class TrayListView extends VBox {
    private final ListView<TrayLine> rows;

    TrayListView(RoundViewModel model) {
        rows = new ListView<>(model.lines());
        rows.setCellFactory(list -> new TrayCell(model::open));
        // The keyboard steps through trays from the sheet itself; a second place of focus would only be in the way.
        rows.setFocusTraversable(false);
        rows.setAccessibleText(Texts.say("trays of the round"));
        rows.getStyleClass().add("bare");
        setVgrow(rows, Priority.ALWAYS);
        Label pace = Words.wrapped(Words.caption(""));
        pace.textProperty().bind(model.paceProperty());
        pace.managedProperty().bind(pace.textProperty().isNotEmpty());
        pace.getStyleClass().add("tray-pace");
        getStyleClass().addAll("card", "flush", "tray-list");
        getChildren().addAll(rows, pace);
        model.lines().addListener((InvalidationListener) changed -> bringOpenIntoSight());
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        // Looked for before it has been made, a row would have all of them made anew.
        rows.layout();
        bringOpenIntoSight();
    }

    private void bringOpenIntoSight() {
        for (int position = 0; position < rows.getItems().size(); position++) {
            if (rows.getItems().get(position).isOpen() && rows.lookup(".virtual-flow") instanceof VirtualFlow<?> flow) {
                flow.scrollTo(position);
                return;
            }
        }
    }
}
