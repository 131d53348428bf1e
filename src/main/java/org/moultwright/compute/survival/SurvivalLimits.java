package org.moultwright.compute.survival;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.moultwright.domain.Require;

/**
 * Two-sided confidence limits of a survival probability.
 *
 * @param lower the lower limit
 * @param upper the upper limit
 */
public record SurvivalLimits(double lower, double upper) {

    /** S ± z·se, cut off at 0 and 1. */
    public static SurvivalLimits plain(double survival, double standardError, double confidence) {
        double reach = z(confidence) * standardError;
        return new SurvivalLimits(Math.max(0, survival - reach), Math.min(1, survival + reach));
    }

    /** S exp(±z·se/S), which never falls below 0, cut off at 1. */
    public static SurvivalLimits log(double survival, double standardError, double confidence) {
        double factor = Math.exp(z(confidence) * standardError / survival);
        return new SurvivalLimits(survival / factor, Math.min(1, survival * factor));
    }

    /** S^exp(±z·se/(S ln S)), which keeps within 0 and 1 by itself. */
    public static SurvivalLimits logLog(double survival, double standardError, double confidence) {
        double reach = z(confidence) * standardError / (survival * Math.abs(Math.log(survival)));
        return new SurvivalLimits(Math.pow(survival, Math.exp(reach)), Math.pow(survival, Math.exp(-reach)));
    }

    private static double z(double confidence) {
        Require.within("confidence", confidence, 0, 1);
        return NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - confidence) / 2);
    }
}
