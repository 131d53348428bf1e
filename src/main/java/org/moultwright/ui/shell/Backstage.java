package org.moultwright.ui.shell;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;

/**
 * Where screens are made ready before they are opened: made, styled and laid out unseen, a step at a time, so that a
 * keeper who turns to one need not wait for any of it. A screen that is opened meanwhile is taken from here.
 */
public final class Backstage {
    private final StackPane floor = new StackPane();
    private final Deque<Runnable> steps = new ArrayDeque<>();

    /** @param dresser puts the style sheets in force into a scene */
    Backstage(List<Screen> screens, double width, double height, Consumer<ObservableList<String>> dresser) {
        Scene scene = new Scene(floor, width, height);
        dresser.accept(scene.getStylesheets());
        for (Screen screen : screens) {
            steps.add(() -> place(screen.node()));
            steps.add(floor::applyCss);
            steps.add(floor::layout);
        }
        steps.add(floor.getChildren()::clear);
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
