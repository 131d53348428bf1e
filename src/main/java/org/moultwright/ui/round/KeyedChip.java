package org.moultwright.ui.round;

import java.util.Locale;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.ToggleChip;

/** Chips that show the key that does the same. */
final class KeyedChip {
    private KeyedChip() {}

    static ToggleChip of(char key, String words, Runnable action) {
        ToggleChip chip = new ToggleChip(words);
        chip.setGraphic(new KeyCap(Character.toString(key).toUpperCase(Locale.ROOT)));
        chip.setFocusTraversable(false);
        chip.setOnAction(event -> action.run());
        return chip;
    }

    static ToggleChip of(KeyedWord word, Runnable action) {
        return of(word.key(), word.text(), action);
    }
}
