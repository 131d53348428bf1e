package org.moultwright.compute.scoring;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How good forecasts were. Days, shares within [0, 1].
 *
 * @param count forecasts scored
 * @param biasDays mean of how late they were
 * @param meanAbsoluteErrorDays mean distance of their middle from the truth
 * @param crpsDays mean continuous ranked probability score (Gneiting &amp; Raftery 2007)
 * @param coverage share of truths within the 80 % interval
 * @param pitCounts how many truths fell in each tenth of their forecast's probability; even if it is calibrated
 */
public record Accuracy(
        int count,
        double biasDays,
        double meanAbsoluteErrorDays,
        double crpsDays,
        double coverage,
        List<Integer> pitCounts) {
    private static final int TENTHS = 10;

    public Accuracy {
        pitCounts = List.copyOf(pitCounts);
    }

    /** The accuracy of at least one forecast. */
    public static Accuracy of(List<Outcome> outcomes) {
        Integer[] tenths = new Integer[TENTHS];
        Arrays.fill(tenths, 0);
        outcomes.forEach(outcome -> tenths[(int) Math.min(TENTHS - 1, outcome.pit() * TENTHS)]++);
        return new Accuracy(
                outcomes.size(),
                mean(outcomes, Outcome::lateDays),
                mean(outcomes, outcome -> Math.abs(outcome.lateDays())),
                mean(outcomes, outcome -> outcome.forecast().crpsDays(outcome.truth())),
                mean(outcomes, outcome -> outcome.isCovered() ? 1 : 0),
                List.of(tenths));
    }

    private static double mean(List<Outcome> outcomes, ToDoubleFunction<Outcome> figure) {
        return outcomes.stream().mapToDouble(figure).average().orElse(Double.NaN);
    }
}
