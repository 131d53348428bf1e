package org.moultwright.ui.deeds;

import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.jspecify.annotations.Nullable;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Words;

/** A deed's line: when, what, and of which brood. */
final class DeedCell extends ListCell<DeedLine> {
    private final Label when = Words.styled("", "deed-when", "muted");
    private final Label words = Words.plain("");
    private final Label about = Words.muted("");
    private final Flow row = new Flow(when, words, about);

    DeedCell() {
        row.getStyleClass().add("deed-row");
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        about.setMinWidth(USE_PREF_SIZE);
        // As wide as the list, however long the words.
        setPrefWidth(0);
    }

    @Override
    protected void updateItem(@Nullable DeedLine line, boolean empty) {
        super.updateItem(line, empty);
        setGraphic(empty ? null : row);
        if (line != null) {
            when.setText(line.when());
            words.setText(line.words());
            about.setText(line.about());
            setAccessibleText(line.when() + ": " + line.words() + ", " + line.about());
        }
    }
}
