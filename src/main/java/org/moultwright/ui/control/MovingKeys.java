package org.moultwright.ui.control;

import java.util.Arrays;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Keys that move what is scrolled, from where they would do nothing else. */
public final class MovingKeys {
    private static final Set<KeyCode> KEYS =
            Set.of(KeyCode.UP, KeyCode.DOWN, KeyCode.PAGE_UP, KeyCode.PAGE_DOWN, KeyCode.HOME, KeyCode.END);

    private MovingKeys() {}

    /** While a node has the keyboard they move the first of these that is higher than its room. */
    public static void of(Node node, ScrollPane... panes) {
        node.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getTarget() == node && KEYS.contains(event.getCode())) {
                Arrays.stream(panes).filter(MovingKeys::hasMore).findFirst().ifPresent(pane -> pane.fireEvent(event));
                event.consume();
            }
        });
    }

    private static boolean hasMore(ScrollPane pane) {
        return pane.getContent().getLayoutBounds().getHeight()
                > pane.getViewportBounds().getHeight() + 1;
    }
}
