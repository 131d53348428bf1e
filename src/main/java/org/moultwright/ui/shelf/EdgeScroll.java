package org.moultwright.ui.shelf;

import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.geometry.Point2D;
import javafx.scene.control.ListView;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.input.DragEvent;
import org.moultwright.ui.control.Em;

/**
 * Lets a list go by while something is carried near its upper or lower edge: the nearer, the faster, and as long as the hand
 * stays there, for the system tells of a hand only while it moves.
 */
final class EdgeScroll extends AnimationTimer {
    private static final double EDGE_EMS = 3;
    private static final double FASTEST_EMS_PER_SECOND = 40;
    private static final double NANOS_PER_SECOND = 1e9;

    /** A picture that came late must not let the list leap. */
    private static final double LONGEST_STEP_SECONDS = 0.1;

    private final ListView<?> list;
    private final Em type;
    private final Consumer<Point2D> moved;
    private Point2D hand = Point2D.ZERO;
    private long lastNanos;

    /**
     * @param type the size of text in the list
     * @param moved told where the hand is in the scene once something else lies beneath it
     */
    EdgeScroll(ListView<?> list, Em type, Consumer<Point2D> moved) {
        this.list = list;
        this.type = type;
        this.moved = moved;
        list.addEventFilter(DragEvent.DRAG_OVER, this::carried);
        list.addEventHandler(DragEvent.DRAG_EXITED, event -> stop());
        list.addEventFilter(DragEvent.DRAG_DROPPED, event -> stop());
        list.addEventFilter(DragEvent.DRAG_DONE, event -> stop());
    }

    private void carried(DragEvent event) {
        hand = new Point2D(event.getSceneX(), event.getSceneY());
        if (nearness() == 0) {
            stop();
        } else {
            start();
        }
    }

    @Override
    public void stop() {
        super.stop();
        lastNanos = 0;
    }

    @Override
    public void handle(long nowNanos) {
        double seconds = lastNanos == 0 ? 0 : Math.min(LONGEST_STEP_SECONDS, (nowNanos - lastNanos) / NANOS_PER_SECOND);
        lastNanos = nowNanos;
        double pixels = seconds * nearness() * FASTEST_EMS_PER_SECOND * type.pixels();
        if (list.lookup(".virtual-flow") instanceof VirtualFlow<?> rows && rows.scrollPixels(pixels) != 0) {
            moved.accept(hand);
        }
    }

    /** From -1 at the upper edge over 0 in the middle to 1 at the lower. */
    private double nearness() {
        double edge = EDGE_EMS * type.pixels();
        double fromTop = list.sceneToLocal(hand).getY();
        double fromBottom = list.getHeight() - fromTop;
        if (fromTop < edge) {
            return -Math.min(1, 1 - fromTop / edge);
        }
        return fromBottom < edge ? Math.min(1, 1 - fromBottom / edge) : 0;
    }
}
