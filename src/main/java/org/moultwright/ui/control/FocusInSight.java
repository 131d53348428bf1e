package org.moultwright.ui.control;

import javafx.beans.value.ChangeListener;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;

/**
 * Scrolls a page to what has the keyboard, and with a field to the sentence beneath it, and to a banner that begins to say
 * something. What is laid out anew while it has the keyboard is followed; a page the keeper moves meanwhile stays where it
 * was moved to.
 */
public final class FocusInSight {
    /** A ring that touches the edge would look cut. */
    private static final double MARGIN_PIXELS = 6;

    private final ScrollPane pane;
    private final Runnable look = this::look;
    private final ChangeListener<Node> follow = (observed, before, now) -> follow(now);
    private final ChangeListener<Bounds> grow = (observed, before, now) -> lookOnceLaidOut(this.followed);
    private Node followed;

    /** What is to be in sight once it is laid out. */
    private Node wanted;

    private FocusInSight(ScrollPane pane) {
        this.pane = pane;
        this.followed = pane;
        this.wanted = pane;
        pane.addEventHandler(Banner.APPEARED, appeared -> lookOnceLaidOut((Node) appeared.getTarget()));
        pane.viewportBoundsProperty().addListener((observed, before, now) -> keepInSight(before, now));
        pane.sceneProperty().addListener((observed, before, now) -> stand(before, now));
    }

    /** From here on. */
    public static void of(ScrollPane pane) {
        new FocusInSight(pane);
    }

    private void stand(Scene before, Scene now) {
        if (before != null) {
            before.focusOwnerProperty().removeListener(follow);
            before.removePostLayoutPulseListener(look);
        }
        if (now != null) {
            now.focusOwnerProperty().addListener(follow);
        }
    }

    private void follow(Node focused) {
        followed.layoutBoundsProperty().removeListener(grow);
        followed = focused != null && isWithin(focused) ? Beneath.whole(focused) : pane;
        if (followed != pane) {
            followed.layoutBoundsProperty().addListener(grow);
            bringIntoSight(followed);
            lookOnceLaidOut(followed);
        }
    }

    /** In a lower room, as under an alarm that was raised just now, it would be behind the edge. */
    private void keepInSight(Bounds before, Bounds now) {
        if (followed != pane && now.getHeight() < before.getHeight()) {
            lookOnceLaidOut(followed);
        }
    }

    /** A page that was shown just now has its places only then. */
    private void lookOnceLaidOut(Node part) {
        Scene scene = pane.getScene();
        wanted = part;
        if (scene != null) {
            scene.removePostLayoutPulseListener(look);
            scene.addPostLayoutPulseListener(look);
        }
    }

    private void look() {
        pane.getScene().removePostLayoutPulseListener(look);
        if (isWithin(wanted)) {
            bringIntoSight(wanted);
        }
    }

    private void bringIntoSight(Node part) {
        Node page = pane.getContent();
        Bounds at = page.sceneToLocal(part.localToScene(part.getLayoutBounds()));
        double seen = pane.getViewportBounds().getHeight();
        double hidden = page.getLayoutBounds().getHeight() - seen;
        if (hidden <= 0) {
            return;
        }
        double top = pane.getVvalue() * hidden;
        double upper = Math.max(0, at.getMinY() - MARGIN_PIXELS);
        double lower = Math.min(hidden + seen, at.getMaxY() + MARGIN_PIXELS);
        boolean isTooHigh = lower - upper > seen;
        if (upper < top || (isTooHigh && upper > top + seen / 2)) {
            pane.setVvalue(Math.min(1, upper / hidden));
        } else if (!isTooHigh && lower > top + seen) {
            pane.setVvalue((lower - seen) / hidden);
        }
    }

    private boolean isWithin(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at == pane.getContent()) {
                return true;
            }
        }
        return false;
    }
}
