package org.moultwright.ui.control;

import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** A field for free text of several lines, in which Tab leads on as it does everywhere else. */
public final class NoteArea extends TextArea {
    public NoteArea(String name, String prompt) {
        setAccessibleText(name);
        setPromptText(prompt);
        setWrapText(true);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    /** In the toolkit's field of several lines it is Ctrl + Tab that leads on. */
    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.TAB && !event.isControlDown()) {
            event.consume();
            fireEvent(new KeyEvent(
                    KeyEvent.KEY_PRESSED, "\t", "\t", KeyCode.TAB, event.isShiftDown(), true, false, false));
        }
    }
}
