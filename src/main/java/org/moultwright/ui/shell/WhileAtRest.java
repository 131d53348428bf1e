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

    private final PauseTransition wait = new PauseTransition();
    private final EventHandler<InputEvent> stir = event -> waitFor(REST);

    private WhileAtRest(Scene scene, BooleanSupplier step) {
        wait.setOnFinished(event -> {
            if (isOpen(scene) && step.getAsBoolean()) {
                waitFor(BREATH);
            } else {
                scene.removeEventFilter(InputEvent.ANY, stir);
            }
        });
    }

    /**
     * Begins to wait for a rest; what is left undone when the window is closed stays so.
     *
     * @param step does one step; false once there is none left
     */
    public static void run(Scene scene, BooleanSupplier step) {
        WhileAtRest work = new WhileAtRest(scene, step);
        scene.addEventFilter(InputEvent.ANY, work.stir);
        work.waitFor(REST);
    }

    private static boolean isOpen(Scene scene) {
        return scene.getWindow() != null && scene.getWindow().isShowing();
    }

    private void waitFor(Duration time) {
        wait.stop();
        wait.setDuration(time);
        wait.play();
    }
}
