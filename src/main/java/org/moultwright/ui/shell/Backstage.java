package org.moultwright.ui.shell;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;

/**
 * Where screens are made ready before they are opened: made, styled and laid out unseen, a step at a time, so that a
 * keeper who turns to one need not wait for any of it. A screen that is opened meanwhile is taken from here.
 *
 * <p>This is a floor in the window itself, never seen and gone once all is ready: styles that were worked out in one
 * window are worked out anew in another.
 */
public final class Backstage {
    private final StackPane floor = new StackPane();
    private final Deque<Runnable> steps = new ArrayDeque<>();

    /** @param theatre holds the floor meanwhile, in the place of the screens */
    Backstage(List<Screen> screens, Pane theatre, double width, double height) {
        floor.setManaged(false);
        floor.setVisible(false);
        floor.resize(width, height);
        theatre.getChildren().add(0, floor);
        for (Screen screen : screens) {
            steps.add(screen::node);
            steps.add(() -> {
                place(screen.node());
                floor.applyCss();
            });
            steps.add(floor::layout);
        }
        steps.add(() -> {
            floor.getChildren().clear();
            theatre.getChildren().remove(floor);
        });
    }

    /** Does the next step, on the toolkit's thread; false once there is none left. */
    public boolean step() {
        Runnable next = steps.poll();
        if (next == null) {
            return false;
        }
        next.run();
        return true;
    }

    /** A screen that was opened already stands on stage. */
    private void place(Node screen) {
        floor.getChildren().clear();
        if (screen.getScene() == null) {
            floor.getChildren().add(screen);
        }
    }
}
