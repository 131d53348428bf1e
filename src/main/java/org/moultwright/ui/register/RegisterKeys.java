package org.moultwright.ui.register;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.language.Texts;
import org.moultwright.ui.shell.KeyHint;

/**
 * The keys of the register. None that writes something down is a letter alone: a scanner types letters, wherever the
 * keyboard is.
 */
final class RegisterKeys {
    static final List<KeyHint> HINTS = List.of(
            new KeyHint("F2", Texts.say("scan or type a code; so does any letter or digit outside a field")),
            new KeyHint("F3", Texts.say("filter by words")),
            new KeyHint("↑ ↓", Texts.say("from pot to pot; with Shift, select on the way")),
            new KeyHint("Space", Texts.say("select the pot, or no longer")),
            new KeyHint("Ctrl + A", Texts.say("select all shown")),
            new KeyHint("Ctrl + F", Texts.say("fed: those selected; with Shift, all shown")),
            new KeyHint("Ctrl + M", Texts.say("moulted: those selected; with Shift, all shown")),
            new KeyHint("Ctrl + D", Texts.say("dead: those selected; with Shift, all shown")),
            new KeyHint("Ctrl + H", Texts.say("handed over: those selected; with Shift, all shown")),
            new KeyHint("Ctrl + S", Texts.say("a hand-over slip for those selected")),
            new KeyHint("Ctrl + P", Texts.say("the labels of those selected, again")),
            new KeyHint("Esc", Texts.say("clear a code begun, then show all again, then select none")));

    private RegisterKeys() {}

    /** Does what a key asks for; false where it asks for nothing here. */
    static boolean pressed(KeyEvent event, RegisterViewModel model) {
        if (event.getCode() == KeyCode.ESCAPE) {
            return model.stepBack();
        }
        if (!event.isShortcutDown() || event.isAltDown()) {
            return false;
        }
        if (event.getCode() == KeyCode.A && !isInWords(event)) {
            model.selectShown();
            return true;
        }
        Optional<What> what = what(event.getCode());
        what.ifPresent(happened -> {
            if (event.isShiftDown()) {
                model.tendShown(happened);
            } else {
                model.tend(happened);
            }
        });
        return what.isPresent();
    }

    /** Whether a typed letter belongs to a code: anything a label holds, typed outside a field. */
    static boolean isOfACode(KeyEvent event) {
        String letter = event.getCharacter();
        return !(event.getTarget() instanceof TextInputControl)
                && !event.isShortcutDown()
                && !event.isAltDown()
                && letter.length() == 1
                && (Character.isLetterOrDigit(letter.charAt(0)) || letter.equals("-"));
    }

    private static boolean isInWords(KeyEvent event) {
        return event.getTarget() instanceof TextInputControl input
                && !input.getText().isEmpty();
    }

    private static Optional<What> what(KeyCode key) {
        return switch (key) {
            case F -> Optional.of(What.FED);
            case M -> Optional.of(What.MOULTED);
            case D -> Optional.of(What.DIED);
            case H -> Optional.of(What.HANDED_OVER);
            default -> Optional.empty();
        };
    }
}
