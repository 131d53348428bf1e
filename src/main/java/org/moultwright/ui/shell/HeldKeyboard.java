package org.moultwright.ui.shell;

import java.util.List;
import java.util.stream.Stream;
import javafx.beans.value.ChangeListener;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * Holds the keyboard within a part of the window that lies over the rest: Tab goes round in it, and from whatever else it
 * was led to it comes back to where it was.
 */
final class HeldKeyboard {
    private final Parent part;
    private final ChangeListener<Node> watch = (observed, before, now) -> moved(now);
    private Node last;

    HeldKeyboard(Parent part) {
        this.part = part;
        this.last = part;
        part.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    /** From now on; what has it now is within the part. */
    void hold() {
        Scene scene = part.getScene();
        if (scene != null) {
            moved(scene.getFocusOwner());
            scene.focusOwnerProperty().addListener(watch);
        }
    }

    /** It may go where it will. */
    void letGo() {
        Scene scene = part.getScene();
        if (scene != null) {
            scene.focusOwnerProperty().removeListener(watch);
        }
    }

    private void moved(Node now) {
        if (isWithin(now)) {
            last = now;
        } else if (isWithin(last)) {
            last.requestFocus();
        }
    }

    private void pressed(KeyEvent event) {
        if (event.getCode() != KeyCode.TAB || event.isControlDown()) {
            return;
        }
        List<Node> stops = stops(part).toList();
        int at = stops.indexOf(last);
        if (!stops.isEmpty() && at == (event.isShiftDown() ? 0 : stops.size() - 1)) {
            stops.get(event.isShiftDown() ? stops.size() - 1 : 0).requestFocus();
            event.consume();
        }
    }

    private static Stream<Node> stops(Parent root) {
        return root.getChildrenUnmodifiable().stream()
                .filter(child -> child.isVisible() && !child.isDisabled())
                .flatMap(child -> Stream.concat(
                        Stream.of(child).filter(Node::isFocusTraversable),
                        child instanceof Parent parent ? stops(parent) : Stream.empty()));
    }

    private boolean isWithin(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at == part) {
                return node.getScene() == part.getScene();
            }
        }
        return false;
    }
}
