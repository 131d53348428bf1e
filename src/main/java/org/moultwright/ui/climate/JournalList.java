package org.moultwright.ui.climate;

import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Words;

/** The alarm journal as a list. */
final class JournalList extends ListView<JournalRow> {
    JournalList(ObservableList<JournalRow> rows) {
        super(rows);
        getStyleClass().add("bare");
        setAccessibleText(Texts.say("alarm journal"));
        setPlaceholder(Words.muted(Texts.say("No alarm in the last 30 days.")));
        setCellFactory(shown -> new Cell());
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
