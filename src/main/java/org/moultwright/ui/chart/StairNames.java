package org.moultwright.ui.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/** Finds places for the names of stairs at their ends: above, beneath, or wherever fewest stairs and names are crossed. */
final class StairNames {
    private static final double HEIGHT_EMS = 1.1;
    private static final double CLEAR_EMS = 0.15;

    private final List<Stair> stairs;
    private final double left;
    private final double top;
    private final double em;
    private final List<Box> taken = new ArrayList<>();

    /**
     * @param left where the plane begins
     * @param top where it ends above
     * @param em the size of running text
     */
    StairNames(List<Stair> stairs, double left, double top, double em) {
        this.stairs = List.copyOf(stairs);
        this.left = left;
        this.top = top;
        this.em = em;
    }

    /** The place of a stair's name of so many pixels, clear of those placed before. */
    Place next(int stair, double width) {
        double right = Math.max(stairs.get(stair).right(), left + width);
        double end = stairs.get(stair).end();
        double near = (HEIGHT_EMS / 2 + CLEAR_EMS) * em;
        Box best = DoubleStream.of(end - near, end + near, end - 2 * near, end + 2 * near, end + 3 * near)
                .filter(middle -> middle - HEIGHT_EMS * em / 2 >= top - CLEAR_EMS * em)
                .mapToObj(middle ->
                        new Box(right - width, right, middle - HEIGHT_EMS * em / 2, middle + HEIGHT_EMS * em / 2))
                .min(Comparator.comparingLong(this::crossed))
                .orElseThrow();
        taken.add(best);
        return new Place(right, (best.top() + best.bottom()) / 2);
    }

    private long crossed(Box box) {
        return stairs.stream().filter(stair -> stair.crosses(box)).count()
                + taken.stream().filter(box::meets).count();
    }

    /** Where a name ends, and its middle line. */
    record Place(double right, double middle) {}

    private record Box(double left, double right, double top, double bottom) {
        boolean meets(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    /** A stair as drawn, corner by corner. */
    record Stair(double[] xs, double[] ys) {
        double right() {
            return xs[xs.length - 1];
        }

        double end() {
            return ys[ys.length - 1];
        }

        /** Whether one of its treads or risers runs through a box. */
        private boolean crosses(Box box) {
            for (int i = 1; i < xs.length; i++) {
                Box step = new Box(xs[i - 1], xs[i], Math.min(ys[i - 1], ys[i]) - 1, Math.max(ys[i - 1], ys[i]) + 1);
                if (step.meets(box)) {
                    return true;
                }
            }
            return false;
        }
    }
}
