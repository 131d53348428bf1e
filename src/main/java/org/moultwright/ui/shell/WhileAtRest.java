package org.moultwright.ui.shell;

import java.util.function.BooleanSupplier;
import javafx.animation.PauseTransition;
import javafx.event.EventHandler;
import javafx.scene.Scene;
import javafx.scene.input.InputEvent;
import javafx.util.Duration;

/** Does work step by step while the keeper rests: no key and no pointer for a while. Whatever is typed comes first. */
public final class WhileAtRest {
    private static final Duration REST = Duration.seconds(2);

    /** Between two steps whatever was pressed meanwhile is done. */
    private static final Duration BREATH = Duration.millis(50);

    private final Scene scene;
    private final PauseTransition wait = new PauseTransition(REST);
    private final EventHandler<InputEvent> stir = event -> waitFor(REST);
    private BooleanSupplier step = () -> false;
    private boolean hasWork;
    private boolean isAtRest;

    /** Begins to watch for a rest: one that has begun before there is work counts. */
    public WhileAtRest(Scene scene) {
        this.scene = scene;
        wait.setOnFinished(event -> rested());
        scene.addEventFilter(InputEvent.ANY, stir);
        waitFor(REST);
    }

    /**
     * Works while there is rest; what is left undone when the window is closed stays so.
     *
     * @param step does one step; false once there is none left
     */
    public void run(BooleanSupplier step) {
        this.step = step;
        hasWork = true;
        if (isAtRest) {
            waitFor(BREATH);
        }
    }

    private void rested() {
        isAtRest = true;
        if (!hasWork) {
            return;
        }
        if (isOpen() && step.getAsBoolean()) {
            waitFor(BREATH);
        } else {
            scene.removeEventFilter(InputEvent.ANY, stir);
        }
    }

    private boolean isOpen() {
        return scene.getWindow() != null && scene.getWindow().isShowing();
    }

    private void waitFor(Duration time) {
        isAtRest = false;
        wait.stop();
        wait.setDuration(time);
        wait.play();
    }
}
