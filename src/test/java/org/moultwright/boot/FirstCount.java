package org.moultwright.boot;

import javafx.animation.AnimationTimer;
import javafx.event.Event;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * Says on standard output that a desk can be used: the round is painted, and a key pressed there was counted. What was
 * typed is taken out again.
 */
final class FirstCount extends AnimationTimer {
    static final String SAID = "usable";

    private static final int FRAMES = 2;
    private static final String COUNT = "7";

    private final Scene scene;
    private int frames;

    FirstCount(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void handle(long now) {
        if (!(scene.getFocusOwner() instanceof TextField field) || field.getSkin() == null) {
            return;
        }
        frames++;
        if (frames < FRAMES) {
            return;
        }
        stop();
        Event.fireEvent(
                field, new KeyEvent(KeyEvent.KEY_TYPED, COUNT, "", KeyCode.UNDEFINED, false, false, false, false));
        if (!field.getText().equals(COUNT)) {
            throw new IllegalStateException("a key pressed is not counted: '" + field.getText() + "'");
        }
        System.out.println(SAID);
        field.clear();
    }
}
