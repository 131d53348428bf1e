package org.moultwright.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Toggle;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Walks a scene with the Tab key, as hands without a mouse do. */
final class FocusWalk {
    private static final int LONGEST = 400;

    private FocusWalk() {}

    /** Every stop from the focus round to it again. */
    static List<Node> stops(Scene scene) {
        List<Node> stops = new ArrayList<>();
        Node at = scene.getFocusOwner();
        while (at != null && !stops.contains(at) && stops.size() < LONGEST) {
            stops.add(at);
            Event.fireEvent(
                    at, new KeyEvent(KeyEvent.KEY_PRESSED, "\t", "\t", KeyCode.TAB, false, false, false, false));
            at = scene.getFocusOwner();
        }
        return stops;
    }

    /** All that the Tab key should stop at; of a group of which one is chosen, that one: arrows lead to the others. */
    static List<Node> expected(Parent root) {
        List<Node> found = new ArrayList<>();
        root.getChildrenUnmodifiable().stream()
                .filter(child -> child.isVisible() && !child.isDisabled())
                .forEach(child -> {
                    if (child.isFocusTraversable() && !isUnchosen(child)) {
                        found.add(child);
                    }
                    if (child instanceof Parent parent) {
                        found.addAll(expected(parent));
                    }
                });
        return found;
    }

    private static boolean isUnchosen(Node node) {
        return node instanceof Toggle toggle && toggle.getToggleGroup() != null && !toggle.isSelected();
    }

    /** Whether a step leads up the page without leading into a column further right. */
    static boolean goesBack(Node from, Node to) {
        Bounds left = from.localToScene(from.getLayoutBounds());
        Bounds entered = to.localToScene(to.getLayoutBounds());
        return entered.getMaxY() <= left.getMinY() && entered.getMinX() < left.getMaxX();
    }
}
