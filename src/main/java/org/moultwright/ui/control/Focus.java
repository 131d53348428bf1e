package org.moultwright.ui.control;

import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.scene.Node;

/** Puts the keyboard where it is wanted. */
public final class Focus {
    private Focus() {}

    /** On a node that may not be in the window yet: a scrolled one is only once it was laid out. */
    public static void on(Node node) {
        if (node.getScene() != null) {
            node.requestFocus();
            return;
        }
        node.sceneProperty().addListener(new InvalidationListener() {
            @Override
            public void invalidated(Observable scene) {
                scene.removeListener(this);
                node.requestFocus();
            }
        });
    }

    /** Whether nothing around a node hides it. */
    public static boolean isShown(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }
}
