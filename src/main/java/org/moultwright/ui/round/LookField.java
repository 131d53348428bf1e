package org.moultwright.ui.round;

import java.util.Optional;
import javafx.scene.input.KeyEvent;
import org.moultwright.ui.control.EntryField;

/** The field of one stage: a count, a sample such as 7/20, or at one key: S seen, N none. */
final class LookField extends EntryField {
    private Optional<StageRow> row = Optional.empty();

    LookField() {
        super("", LookEntry.TYPABLE);
        input().addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        input().focusedProperty().addListener((observed, before, focused) -> {
            if (focused) {
                input().selectAll();
                problemProperty().set("");
            } else {
                row.ifPresent(left -> {
                    problemProperty().set(LookEntry.problem(left.textProperty().get()));
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
        forgetRefused();
        textProperty().bindBidirectional(next.textProperty());
        problemProperty().set("");
    }

    void countOneMore() {
        row.ifPresent(StageRow::countOneMore);
    }

    private void typed(KeyEvent event) {
        switch (event.getCharacter()) {
            case "s", "S" -> write(LookEntry.SEEN, event);
            case "n", "N" -> write(LookEntry.NONE, event);
            case "-" -> write(LookEntry.NOT_LOOKED, event);
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
