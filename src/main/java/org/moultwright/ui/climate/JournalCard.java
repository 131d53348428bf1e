package org.moultwright.ui.climate;

import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.ui.control.Words;

/** The alarm journal as a list. */
final class JournalCard extends VBox {
    private static final String WIDTH = "-fx-min-width: 24em; -fx-pref-width: 24em; -fx-max-width: 24em;";

    JournalCard(ObservableList<JournalRow> rows) {
        ListView<JournalRow> list = new ListView<>(rows);
        list.getStyleClass().add("bare");
        list.setAccessibleText("alarm journal");
        list.setPlaceholder(Words.muted("No alarm in the last 30 days."));
        list.setCellFactory(shown -> new Cell());
        VBox.setVgrow(list, Priority.ALWAYS);
        getStyleClass().add("card");
        setStyle(WIDTH);
        getChildren().addAll(Words.cardTitle("Alarms of the last 30 days"), list);
    }

    private static final class Cell extends ListCell<JournalRow> {
        private final Label when = Words.muted("");
        private final Label what = Words.plain("");
        private final HBox row = new HBox(when, what);

        Cell() {
            when.setMinWidth(USE_PREF_SIZE);
            row.getStyleClass().add("story-row");
            getStyleClass().add("probe-cell");
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(JournalRow shown, boolean empty) {
            super.updateItem(shown, empty);
            setAccessibleText(empty ? "" : shown.when() + ", " + shown.what());
            setGraphic(empty ? null : row);
            if (!empty) {
                when.setText(shown.when());
                what.setText(shown.what());
            }
        }
    }
}
