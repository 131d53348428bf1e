package org.moultwright.compute.count;

import org.apache.commons.statistics.distribution.TDistribution;
import org.moultwright.domain.Require;

/**
 * A number of animals worked out from a part of them.
 *
 * @param total the estimate
 * @param standardError its standard error; NaN where a single scoop cannot tell
 * @param degreesOfFreedom of the standard error
 */
public record CountEstimate(double total, double standardError, int degreesOfFreedom) {

    /** The lower end of the central interval with this confidence by Student's t. */
    public double lower(double confidence) {
        return total - reach(confidence);
    }

    /** The upper end of the central interval with this confidence by Student's t. */
    public double upper(double confidence) {
        return total + reach(confidence);
    }

    private double reach(double confidence) {
        Require.within("confidence", confidence, 0, 1);
        if (degreesOfFreedom == 0) {
            return Double.NaN;
        }
        return TDistribution.of(degreesOfFreedom).inverseSurvivalProbability((1 - confidence) / 2) * standardError;
    }
}
