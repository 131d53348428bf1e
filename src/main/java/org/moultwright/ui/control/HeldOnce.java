package org.moultwright.ui.control;

import javafx.beans.value.ChangeListener;
import javafx.event.ActionEvent;
import javafx.event.Event;
import javafx.event.EventHandler;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;

/**
 * Holds what would take the entry of a field in the window, once, for as long as the field asks for it: Enter, Ctrl and
 * Enter, a button that takes what is filled in. The keyboard goes to the field, and the next one goes through.
 *
 * <p>Whoever types 1.5 and Enter at one go has not read that 15 stands there.
 */
final class HeldOnce {
    private final Node input;
    private final Runnable wasHeld;
    private final EventHandler<Event> filter = this::filter;
    private final ChangeListener<Scene> follow = (observed, before, now) -> stand(before, now);
    private boolean isHolding;

    /**
     * @param input of the field
     * @param wasHeld is told that something was held
     */
    HeldOnce(Node input, Runnable wasHeld) {
        this.input = input;
        this.wasHeld = wasHeld;
    }

    void hold(boolean isWanted) {
        if (isWanted == isHolding) {
            return;
        }
        isHolding = isWanted;
        if (isWanted) {
            input.sceneProperty().addListener(follow);
            stand(null, input.getScene());
        } else {
            input.sceneProperty().removeListener(follow);
            stand(input.getScene(), null);
        }
    }

    private void stand(@Nullable Scene before, @Nullable Scene now) {
        if (before != null) {
            before.removeEventFilter(KeyEvent.KEY_PRESSED, filter);
            before.removeEventFilter(ActionEvent.ACTION, filter);
        }
        if (now != null) {
            now.addEventFilter(KeyEvent.KEY_PRESSED, filter);
            now.addEventFilter(ActionEvent.ACTION, filter);
        }
    }

    private void filter(Event event) {
        if (takesEntries(event) && Focus.isShown(input)) {
            event.consume();
            input.requestFocus();
            wasHeld.run();
        }
    }

    /** Enter on a button presses it, and in a note is a line of it. */
    private static boolean takesEntries(Event event) {
        if (event instanceof KeyEvent key) {
            return key.getCode() == KeyCode.ENTER
                    && (key.isShortcutDown()
                            || !(key.getTarget() instanceof Button || key.getTarget() instanceof TextArea));
        }
        return event.getTarget() instanceof Button button && Buttons.takeEntries(button);
    }
}
