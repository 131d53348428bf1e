package org.moultwright.compute.stage;

import org.apache.commons.numbers.gamma.LogBeta;
import org.moultwright.domain.Require;

/**
 * Successes among trials that resemble each other: binomial with a beta-distributed chance.
 *
 * <p>Counts need not be whole: pooling uneven counts leaves parts of animals, for which the factorials
 * continue as gamma functions.
 */
public final class BetaBinomial {
    private BetaBinomial() {}

    /**
     * The log probability.
     *
     * @param successes within [0, trials]
     * @param trials at least 0
     * @param mean the mean chance of success, within (0, 1)
     * @param correlation between two trials, within [0, 1); 0 is the binomial itself
     */
    public static double logProbability(double successes, double trials, double mean, double correlation) {
        Require.within("successes", successes, 0, trials);
        Require.within("mean", mean, Double.MIN_NORMAL, 1 - 1e-16);
        Require.within("correlation", correlation, 0, 1 - 1e-16);
        double failures = trials - successes;
        double logWays = -Math.log1p(trials) - LogBeta.value(successes + 1, failures + 1);
        if (correlation == 0) {
            return logWays + successes * Math.log(mean) + failures * Math.log1p(-mean);
        }
        double alpha = mean * (1 - correlation) / correlation;
        double beta = (1 - mean) * (1 - correlation) / correlation;
        return logWays + LogBeta.value(successes + alpha, failures + beta) - LogBeta.value(alpha, beta);
    }
}
