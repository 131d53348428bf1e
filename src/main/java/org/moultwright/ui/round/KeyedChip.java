package org.moultwright.ui.round;

import java.util.Locale;
import javafx.scene.layout.FlowPane;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.ToggleChip;

/** The chips of a sheet. They leave the focus in the fields: keys reach them from there. */
final class KeyedChip {
    private KeyedChip() {}

    static ToggleChip plain(String words, Runnable action) {
        ToggleChip chip = new ToggleChip(words);
        chip.setFocusTraversable(false);
        chip.setOnAction(event -> action.run());
        return chip;
    }

    /** A chip that shows the key that does the same. */
    static ToggleChip of(char key, String words, Runnable action) {
        ToggleChip chip = plain(words, action);
        chip.setGraphic(new KeyCap(Character.toString(key).toUpperCase(Locale.ROOT)));
        return chip;
    }

    static ToggleChip of(KeyedWord word, Runnable action) {
        return of(word.key(), word.shown(), action);
    }

    /** A row for chips, as high as they need. */
    static FlowPane row() {
        FlowPane row = new FlowPane();
        row.getStyleClass().addAll("chips", "tight");
        row.setMinHeight(FlowPane.USE_PREF_SIZE);
        return row;
    }
}
