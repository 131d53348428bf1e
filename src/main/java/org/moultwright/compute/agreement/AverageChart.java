package org.moultwright.compute.agreement;

import java.util.Arrays;
import java.util.OptionalInt;
import org.moultwright.domain.Require;

/**
 * A control chart of exponentially weighted moving averages: each average is a share of the newest value and the rest
 * of the average before. It finds a small shift that lasts sooner than single values would. Formulas as in
 * NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4.
 *
 * @param weight the newest value's share, 0 to 1
 * @param centre where the averages begin, and lie while nothing shifts
 * @param sd standard deviation of a single value
 * @param centreVariance squared standard uncertainty of the centre, 0 where it is known
 */
public record AverageChart(double weight, double centre, double sd, double centreVariance) {
    /** Common practice; the handbook names 0.2 to 0.3. */
    public static final double WEIGHT = 0.3;

    /** How many standard deviations of an average lie between centre and limit, as in the handbook. */
    private static final double REACH = 3;

    public AverageChart {
        Require.within("weight", weight, Double.MIN_NORMAL, 1);
        Require.within("sd", sd, 0, Double.MAX_VALUE);
        Require.within("centreVariance", centreVariance, 0, Double.MAX_VALUE);
    }

    /**
     * A chart whose centre and spread are those of values from before any shift. That the centre is known from so few
     * widens the limits.
     *
     * @param before two or more values
     * @param leastSd below which the spread of values is not believed, such as that of a last digit
     */
    public static AverageChart after(double[] before, double leastSd) {
        LimitsOfAgreement known = LimitsOfAgreement.of(before, REACH);
        double sd = Math.max(leastSd, known.sd());
        return new AverageChart(WEIGHT, known.bias(), sd, sd * sd / before.length);
    }

    /** The average after each of the values, in order of time. */
    public double[] averages(double[] values) {
        double[] averages = values.clone();
        double before = centre;
        for (int i = 0; i < averages.length; i++) {
            before = weight * averages[i] + (1 - weight) * before;
            averages[i] = before;
        }
        return averages;
    }

    public double lower() {
        return centre - halfWidth();
    }

    public double upper() {
        return centre + halfWidth();
    }

    /** Since which of the averages all to the last lie beyond the same limit; empty if the last one does not. */
    public OptionalInt beyondSince(double[] averages) {
        double[] sides = Arrays.stream(averages)
                .map(average -> average > upper() ? 1 : average < lower() ? -1 : 0)
                .toArray();
        int since = sides.length;
        while (since > 0 && sides[since - 1] != 0 && sides[since - 1] == sides[sides.length - 1]) {
            since--;
        }
        return since == sides.length ? OptionalInt.empty() : OptionalInt.of(since);
    }

    private double halfWidth() {
        return REACH * Math.sqrt(sd * sd * weight / (2 - weight) + centreVariance);
    }
}
