package org.moultwright.boot;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javafx.animation.AnimationTimer;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/**
 * Parts of a desk that come into its window a frame each, once the first is painted and what was typed into it is: styling
 * them takes as long as all the rest. Their places are kept as wide and high as the style sheet has them.
 */
final class LaterParts extends AnimationTimer {
    /** One is painted, and one has what was typed meanwhile. */
    private static final int FRAMES_BEFORE = 2;

    /** What a place is kept for by its words needs another measure while it has none. */
    static final String STAND_IN = "stand-in";

    private final Deque<Runnable> left = new ArrayDeque<>();
    private int frames;

    /** @param parts taken out of the panes they are in, until this was started; what takes no room there stays */
    LaterParts(List<Region> parts) {
        parts.stream().filter(Node::isManaged).forEach(this::takeOut);
    }

    @Override
    public void handle(long now) {
        frames++;
        if (frames > FRAMES_BEFORE) {
            if (left.isEmpty()) {
                stop();
            } else {
                left.remove().run();
            }
        }
    }

    private void takeOut(Region part) {
        ObservableList<Node> place = ((Pane) part.getParent()).getChildren();
        Region standIn = new Region();
        standIn.getStyleClass().setAll(part.getStyleClass());
        standIn.getStyleClass().add(STAND_IN);
        place.set(place.indexOf(part), standIn);
        left.add(() -> place.set(place.indexOf(standIn), part));
    }
}
