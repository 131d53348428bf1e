package org.moultwright.ui.round;

import java.util.Optional;
import javafx.scene.input.KeyEvent;
import org.moultwright.ui.control.EntryField;

/** The field of one stage: a count, a sample such as 7/20, or at one key: S seen, N none. */
final class LookField extends EntryField {
    private static final String DASH = "-";

    private Optional<StageRow> row = Optional.empty();

    /** Whether a dash was typed just now: not looked, or the sign of a count below none, which is not taken. */
    private boolean dashed;

    LookField() {
        super("", LookEntry.TYPABLE);
        input().addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        input().focusedProperty().addListener((observed, before, focused) -> {
            dashed = false;
            if (focused) {
                input().selectAll();
                problemProperty().set("");
            } else {
                row.ifPresent(left -> {
                    problemProperty().set(left.problem());
                    left.left();
                });
            }
        });
    }

    /** Takes what is written of another tray's stage; who wrote here has left the row before, though not the field. */
    void lay(StageRow next) {
        row.ifPresent(before -> {
            textProperty().unbindBidirectional(before.textProperty());
            if (input().isFocused()) {
                before.left();
            }
        });
        row = Optional.of(next);
        dashed = false;
        forgetRefused();
        textProperty().bindBidirectional(next.textProperty());
        problemProperty().set("");
    }

    void countOneMore() {
        row.ifPresent(StageRow::countOneMore);
    }

    private void typed(KeyEvent event) {
        String typed = event.getCharacter();
        if (dashed && !typed.isEmpty() && Character.isDigit(typed.charAt(0))) {
            input().setText(DASH);
            input().end();
        }
        dashed = typed.equals(DASH);
        switch (typed) {
            case "s", "S" -> write(LookEntry.SEEN, event);
            case "n", "N" -> write(LookEntry.NONE, event);
            case DASH -> write(LookEntry.NOT_LOOKED, event);
            default -> {}
        }
    }

    /** The word stands selected, so that the next digit replaces it. */
    private void write(String word, KeyEvent event) {
        textProperty().set(word);
        input().selectAll();
        event.consume();
    }
}
