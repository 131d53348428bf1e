package org.moultwright.compute.forecast;

import org.moultwright.compute.stage.StagePrior;
import org.moultwright.domain.Stage;

/**
 * At what age half of a brood's animals are expected to enter a stage before it has shown anything: what was believed,
 * after what completed broods taught. In warm-days; the age lies between the outer two with 80 % probability.
 */
public record ExpectedAge(Stage into, double p10, double p50, double p90) {
    /** The 90th percentile of the standard normal law. */
    private static final double NINE_TENTHS = 1.2815515655446004;

    static ExpectedAge of(Stage into, StagePrior prior, int boundary) {
        double mean = prior.logMedian().mean()[boundary];
        double sd = Math.sqrt(prior.logMedian().covariance()[boundary][boundary]);
        return new ExpectedAge(
                into, Math.exp(mean - NINE_TENTHS * sd), Math.exp(mean), Math.exp(mean + NINE_TENTHS * sd));
    }
}
