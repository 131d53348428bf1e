package org.moultwright.compute.count;

import java.util.List;
import org.moultwright.domain.Require;

/**
 * How well two counts of the same trays agree.
 *
 * @param technicalError technical error of measurement √(Σd²/2m), in animals
 */
public record RepeatCounts(double technicalError) {

    /** 1.96 √2 to the two places it is used with: the repeatability factor of 95 % of differences. */
    private static final double REPEATABILITY_FACTOR = 2.77;

    /** One count twice. */
    public record Pair(int first, int second) {
        int difference() {
            return second - first;
        }
    }

    /** The technical error of at least one pair of counts. */
    public static RepeatCounts of(List<Pair> pairs) {
        Require.atLeast("pairs", pairs.size(), 1);
        double squares = pairs.stream()
                .mapToDouble(Pair::difference)
                .map(difference -> difference * difference)
                .sum();
        return new RepeatCounts(Math.sqrt(squares / (2 * pairs.size())));
    }

    /** Whether two counts lie so far apart that a third is due. */
    public boolean asksForAThird(Pair pair) {
        return Math.abs(pair.difference()) > REPEATABILITY_FACTOR * technicalError;
    }
}
