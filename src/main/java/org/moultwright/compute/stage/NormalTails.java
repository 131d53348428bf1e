package org.moultwright.compute.stage;

import org.apache.commons.numbers.gamma.Erfc;
import org.apache.commons.numbers.gamma.Erfcx;
import org.apache.commons.numbers.gamma.InverseErfc;

/** The standard normal distribution, exact far out in its tails. */
public final class NormalTails {
    private static final double SQRT2 = Math.sqrt(2);

    private NormalTails() {}

    /** 1 − Φ(z). */
    public static double survival(double z) {
        return 0.5 * Erfc.value(z / SQRT2);
    }

    /** The z above which this probability lies. */
    public static double inverseSurvival(double probability) {
        return SQRT2 * InverseErfc.value(2 * probability);
    }

    /** log Φ(z), through the scaled complementary error function where Φ itself would vanish. */
    public static double logCdf(double z) {
        return z > -5 ? Math.log1p(-survival(z)) : Math.log(0.5 * Erfcx.value(-z / SQRT2)) - z * z / 2;
    }

    /** log(Φ(upper) − Φ(lower)); −∞ where the two are equal. */
    public static double logDifference(double lower, double upper) {
        if (lower > 0) {
            return logDifference(-upper, -lower);
        }
        if (lower == Double.NEGATIVE_INFINITY) {
            return logCdf(upper);
        }
        double logUpper = logCdf(upper);
        return logUpper + Math.log1p(-Math.exp(logCdf(lower) - logUpper));
    }
}
