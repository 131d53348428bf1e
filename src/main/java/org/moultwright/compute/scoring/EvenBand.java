package org.moultwright.compute.scoring;

import org.moultwright.domain.Require;

/**
 * Between which counts each tenth of a calibrated forecast's probability holds its truths, nine times of ten: the 5th
 * and 95th percentile of the binomial law of so many with a chance of a tenth.
 */
public record EvenBand(int low, int high) {
    private static final double TENTH = 0.1;
    private static final double LOWER = 0.05;
    private static final double UPPER = 0.95;

    /** The band of so many truths that tell nothing of each other. */
    public static EvenBand of(int truths) {
        Require.atLeast("truths", truths, 1);
        return new EvenBand(percentile(truths, LOWER), percentile(truths, UPPER));
    }

    private static int percentile(int truths, double share) {
        double logOdds = Math.log(TENTH / (1 - TENTH));
        double logChance = truths * Math.log1p(-TENTH);
        double sum = Math.exp(logChance);
        int count = 0;
        while (sum < share && count < truths) {
            logChance += Math.log(truths - count) - Math.log(count + 1.0) + logOdds;
            count++;
            sum += Math.exp(logChance);
        }
        return count;
    }
}
