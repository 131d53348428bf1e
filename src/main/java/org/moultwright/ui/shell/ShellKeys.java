package org.moultwright.ui.shell;

import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import org.moultwright.language.Texts;

/** The keys that work on every screen. */
final class ShellKeys {
    static final String SETTINGS_NAME = Texts.say("Ctrl + ,");
    static final KeyCombination SETTINGS = new KeyCodeCombination(KeyCode.COMMA, KeyCombination.SHORTCUT_DOWN);
    static final KeyCombination UNDO = new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN);
    static final KeyCombination DEEDS =
            new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
    static final KeyCombination SHEET = new KeyCodeCombination(KeyCode.F1);

    static final List<KeyHint> HINTS = List.of(
            new KeyHint("?", Texts.say("this sheet; F1 does the same")),
            new KeyHint("Ctrl + 1 … 9", Texts.say("the screens of the rail, from the top")),
            new KeyHint(SETTINGS_NAME, Texts.say("settings")),
            new KeyHint("F6", Texts.say("an alarm: I have seen it")),
            new KeyHint("F7, F8", Texts.say("an alarm: quiet for 15 or 60 minutes")),
            new KeyHint("Ctrl + Z", Texts.say("undo what was saved last")),
            new KeyHint("Ctrl + Shift + Z", Texts.say("what was written down last, to take any of it back")),
            new KeyHint("Esc", Texts.say("close what is open")));

    private static final List<KeyCode> DIGITS = List.of(
            KeyCode.DIGIT1,
            KeyCode.DIGIT2,
            KeyCode.DIGIT3,
            KeyCode.DIGIT4,
            KeyCode.DIGIT5,
            KeyCode.DIGIT6,
            KeyCode.DIGIT7,
            KeyCode.DIGIT8,
            KeyCode.DIGIT9);

    private ShellKeys() {}

    static String nameOf(int position) {
        return Texts.say("Ctrl + {0}", position + 1);
    }

    /** The place in the rail this key leads to. */
    static Optional<Integer> position(KeyEvent event) {
        int digit = DIGITS.indexOf(event.getCode());
        return event.isShortcutDown() && digit >= 0 ? Optional.of(digit) : Optional.empty();
    }
}
