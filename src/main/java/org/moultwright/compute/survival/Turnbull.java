package org.moultwright.compute.survival;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.moultwright.domain.Require;

/**
 * The distribution of an event's time from intervals alone: the non-parametric maximum likelihood estimate
 * of Turnbull 1976.
 *
 * <p>Only intervals where it can hold mass are kept; where inside such an interval the mass lies, the data
 * cannot tell. Immutable.
 */
public final class Turnbull {
    private final List<MassInterval> masses;
    private final double logLikelihood;

    private Turnbull(List<MassInterval> masses, double logLikelihood) {
        this.masses = List.copyOf(masses);
        this.logLikelihood = logLikelihood;
    }

    /**
     * An interval (left, right] and the probability in it.
     *
     * @param survival the probability that the event comes after {@code right}
     */
    public record MassInterval(double left, double right, double mass, double survival) {}

    /** The estimate from at least one interval. */
    public static Turnbull of(List<CensoredInterval> intervals) {
        Require.atLeast("intervals", intervals.size(), 1);
        List<CensoredInterval> support = support(intervals);
        boolean[][] covers = new boolean[intervals.size()][support.size()];
        for (int i = 0; i < covers.length; i++) {
            for (int j = 0; j < support.size(); j++) {
                covers[i][j] = intervals.get(i).covers(support.get(j));
            }
        }
        SelfConsistency fit = SelfConsistency.fit(covers);
        return new Turnbull(massIntervals(support, fit.masses()), fit.logLikelihood());
    }

    /** The intervals that hold mass, in order. */
    public List<MassInterval> masses() {
        return masses;
    }

    public double logLikelihood() {
        return logLikelihood;
    }

    private static List<MassInterval> massIntervals(List<CensoredInterval> support, double[] masses) {
        List<MassInterval> found = new ArrayList<>();
        double survival = 1;
        for (int j = 0; j < masses.length; j++) {
            if (masses[j] > 0) {
                survival = Math.max(0, survival - masses[j]);
                found.add(new MassInterval(support.get(j).left(), support.get(j).right(), masses[j], survival));
            }
        }
        return found;
    }

    /** The spans from a left end to the next right end with no other end between them. */
    private static List<CensoredInterval> support(List<CensoredInterval> intervals) {
        List<End> ends = intervals.stream()
                .flatMap(interval -> Stream.of(End.leftOf(interval), End.rightOf(interval)))
                .sorted(Comparator.comparingDouble(End::time).thenComparingInt(End::rank))
                .toList();
        List<CensoredInterval> support = new ArrayList<>();
        for (int i = 1; i < ends.size(); i++) {
            if (!ends.get(i).isLeft() && ends.get(i - 1).isLeft()) {
                support.add(
                        new CensoredInterval(ends.get(i - 1).time(), ends.get(i).time()));
            }
        }
        return support;
    }

    /** An end of an interval; at one time an exact event opens first, then spans close, then others open. */
    private record End(double time, int rank, boolean isLeft) {
        static End leftOf(CensoredInterval interval) {
            return new End(interval.left(), interval.left() == interval.right() ? 0 : 2, true);
        }

        static End rightOf(CensoredInterval interval) {
            return new End(interval.right(), 1, false);
        }
    }
}
