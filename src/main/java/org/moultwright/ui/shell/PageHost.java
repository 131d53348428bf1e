package org.moultwright.ui.shell;

import javafx.beans.value.ChangeListener;
import javafx.geometry.Bounds;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Skin;
import org.moultwright.ui.control.ScrolledSkin;

/** Where a screen's page stands: as large as its room while that is enough, else scrolled to what has the keyboard. */
public final class PageHost extends ScrollPane {
    private final ChangeListener<Node> follow = (observed, before, now) -> bringIntoSight(now);

    public PageHost() {
        setFitToWidth(true);
        setFitToHeight(true);
        setFocusTraversable(false);
        sceneProperty().addListener((observed, before, now) -> follow(before, now));
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected Skin<?> createDefaultSkin() {
        return new ScrolledSkin(this);
    }

    private void follow(Scene before, Scene now) {
        if (before != null) {
            before.focusOwnerProperty().removeListener(follow);
        }
        if (now != null) {
            now.focusOwnerProperty().addListener(follow);
        }
    }

    private void bringIntoSight(Node focused) {
        Node page = getContent();
        if (focused == null || page == null || !isWithin(focused, page)) {
            return;
        }
        Bounds at = page.sceneToLocal(focused.localToScene(focused.getLayoutBounds()));
        double seen = getViewportBounds().getHeight();
        double hidden = page.getLayoutBounds().getHeight() - seen;
        if (hidden <= 0) {
            return;
        }
        double top = getVvalue() * hidden;
        if (at.getMinY() < top || at.getHeight() > seen) {
            setVvalue(Math.max(0, at.getMinY()) / hidden);
        } else if (at.getMaxY() > top + seen) {
            setVvalue(Math.min(1, (at.getMaxY() - seen) / hidden));
        }
    }

    private static boolean isWithin(Node node, Node page) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at == page) {
                return true;
            }
        }
        return false;
    }
}
