package org.moultwright.ui.round;

import javafx.scene.input.KeyEvent;
import org.moultwright.ui.control.EntryField;

/** The field of one stage: a count, a sample such as 7/20, or at one key: S seen, N none. */
final class LookField extends EntryField {
    LookField(StageRow row, String name) {
        super(name, LookEntry.TYPABLE);
        textProperty().bindBidirectional(row.textProperty());
        input().addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        input().focusedProperty().addListener((observed, before, focused) -> {
            if (focused) {
                input().selectAll();
                problemProperty().set("");
            } else {
                problemProperty().set(LookEntry.problem(row.textProperty().get()));
                row.left();
            }
        });
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
