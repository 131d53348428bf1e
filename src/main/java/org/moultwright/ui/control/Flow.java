package org.moultwright.ui.control;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/**
 * A row that goes on below where there is no room.
 *
 * <p>While the least widths of its children fit side by side it is a plain row. In a narrower place, or in larger text,
 * it is as many lines as it takes, and as high. So a child's least width says how far it may be squeezed before it
 * moves to a line of its own. Style sheets know a row of several lines as {@code :broken}.
 */
public class Flow extends HBox {
    /** Widths are rounded up to whole pixels; a row within a row must not break over that. */
    private static final double ROUNDING_PIXELS = 1.5;

    private static final PseudoClass BROKEN = PseudoClass.getPseudoClass("broken");

    public Flow(Node... children) {
        super(children);
    }

    @Override
    public final Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected final double computeMinWidth(double height) {
        double widest = 0;
        for (Node child : getManagedChildren()) {
            widest = Math.max(widest, least(child) + across(child));
        }
        return across(getInsets()) + widest;
    }

    @Override
    protected final double computeMinHeight(double width) {
        return isBroken(width) ? brokenHeight(width) : super.computeMinHeight(width);
    }

    @Override
    protected final double computePrefHeight(double width) {
        return isBroken(width) ? brokenHeight(width) : super.computePrefHeight(width);
    }

    @Override
    protected final void layoutChildren() {
        boolean isBroken = isBroken(getWidth());
        pseudoClassStateChanged(BROKEN, isBroken);
        if (isBroken) {
            layOutLines();
        } else {
            super.layoutChildren();
        }
    }

    /** Whether a line's only child takes all of the line. */
    boolean fillsLines() {
        return false;
    }

    private boolean isBroken(double width) {
        double room = width - across(getInsets());
        double taken = -getSpacing();
        for (Node child : getManagedChildren()) {
            taken += getSpacing() + comfortable(child, room) + across(child);
        }
        return width > 0 && taken > room + ROUNDING_PIXELS;
    }

    private void layOutLines() {
        Insets inner = getInsets();
        double room = getWidth() - across(inner);
        List<Line> lines = lines(room);
        double total = lines.stream().mapToDouble(Line::height).sum() + getSpacing() * (lines.size() - 1);
        double more = Math.max(0, getHeight() - inner.getTop() - inner.getBottom() - total) / lines.size();
        double y = inner.getTop();
        for (Line line : lines) {
            double height = snapSizeY(line.height() + (isFillHeight() ? more : 0));
            double x = inner.getLeft();
            for (int i = 0; i < line.nodes().size(); i++) {
                Node child = line.nodes().get(i);
                double wide = line.widths()[i];
                layoutInArea(
                        child,
                        x,
                        y,
                        wide,
                        height,
                        line.baseline(),
                        getMargin(child),
                        true,
                        isFillHeight(),
                        getAlignment().getHpos(),
                        getAlignment().getVpos());
                x += wide + getSpacing();
            }
            y += height + getSpacing();
        }
    }

    private double brokenHeight(double width) {
        List<Line> lines = lines(width - across(getInsets()));
        double high = lines.stream().mapToDouble(Line::height).sum() + getSpacing() * (lines.size() - 1);
        return snapSizeY(getInsets().getTop() + high + getInsets().getBottom());
    }

    private List<Line> lines(double room) {
        List<Line> lines = new ArrayList<>();
        List<Node> line = new ArrayList<>();
        double taken = 0;
        for (Node child : getManagedChildren()) {
            double wide = comfortable(child, room) + across(child);
            if (!line.isEmpty() && taken + getSpacing() + wide > room + ROUNDING_PIXELS) {
                lines.add(line(line, room));
                line = new ArrayList<>();
                taken = 0;
            }
            taken += wide + (line.isEmpty() ? 0 : getSpacing());
            line.add(child);
        }
        lines.add(line(line, room));
        return lines;
    }

    private Line line(List<Node> nodes, double room) {
        double[] widths = widths(nodes, room - getSpacing() * (nodes.size() - 1));
        double height = 0;
        double baseline = 0;
        for (int i = 0; i < widths.length; i++) {
            Node child = nodes.get(i);
            double wide = widths[i] - across(child);
            height = Math.max(height, bounded(child.minHeight(wide), child.prefHeight(wide), child.maxHeight(wide)));
            baseline = Math.max(baseline, child.getBaselineOffset());
        }
        boolean isOnBaseline = getAlignment().getVpos() == VPos.BASELINE;
        return new Line(List.copyOf(nodes), widths, snapSizeY(height), isOnBaseline ? baseline : 0);
    }

    /** What each gets of a line: what it would like, less where that is too much, more where it wants to grow. */
    private double[] widths(List<Node> nodes, double room) {
        double[] widths = new double[nodes.size()];
        double[] least = new double[widths.length];
        for (int i = 0; i < widths.length; i++) {
            Node child = nodes.get(i);
            least[i] = least(child) + across(child);
            // Part of a pixel less, and the last word of a label would stand in a line of its own.
            widths[i] = Math.max(least[i], snapSizeX(child.prefWidth(-1)) + across(child));
        }
        double over = Arrays.stream(widths).sum() - room;
        double give = Arrays.stream(widths).sum() - Arrays.stream(least).sum();
        long growing = nodes.stream().filter(child -> grows(child, nodes)).count();
        for (int i = 0; i < widths.length; i++) {
            if (over > 0 && give > 0) {
                widths[i] -= Math.min(1, over / give) * (widths[i] - least[i]);
            } else if (over < 0 && grows(nodes.get(i), nodes)) {
                widths[i] += -over / growing;
            }
            widths[i] = Math.min(Math.floor(widths[i] + 0.001), Math.max(room, 0));
        }
        return widths;
    }

    private boolean grows(Node child, List<Node> line) {
        return getHgrow(child) == Priority.ALWAYS || (fillsLines() && line.size() == 1);
    }

    /** A row within a row moves to a line of its own before it breaks. */
    private double comfortable(Node child, double room) {
        boolean isRow = child instanceof Flow row && !row.fillsLines();
        return isRow ? Math.max(least(child), Math.min(snapSizeX(child.prefWidth(-1)), room)) : least(child);
    }

    private double least(Node child) {
        return snapSizeX(child.minWidth(-1));
    }

    private static double across(Node child) {
        Insets margin = getMargin(child);
        return margin == null ? 0 : across(margin);
    }

    private static double across(Insets insets) {
        return insets.getLeft() + insets.getRight();
    }

    private static double bounded(double least, double liked, double most) {
        return Math.max(least, Math.min(liked, most));
    }

    /** One line: its children, the width each has, how high it is, and where its words stand. */
    private record Line(List<Node> nodes, double[] widths, double height, double baseline) {}
}
