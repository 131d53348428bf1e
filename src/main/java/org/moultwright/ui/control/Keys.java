package org.moultwright.ui.control;

import javafx.scene.control.Button;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;

/** Tells keys that are words being written, or that press a button, from keys that ask for something. */
public final class Keys {
    private Keys() {}

    /** Whether a key goes into free text; an {@link EntryField} takes only what it may, so letters are free there. */
    public static boolean goToText(KeyEvent event) {
        return event.getTarget() instanceof TextInputControl input && !(input.getParent() instanceof EntryField);
    }

    /** Presses the button a key was typed on, for Enter, which the toolkit leaves alone there; tells whether it was one. */
    public static boolean press(KeyEvent event) {
        if (event.getTarget() instanceof Button button) {
            button.fire();
            return true;
        }
        return false;
    }
}
