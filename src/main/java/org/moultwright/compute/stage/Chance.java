package org.moultwright.compute.stage;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.AhrensDieterMarsagliaTsangGammaSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/** Random draws from one seeded source: the same seed gives the same draws. Not safe to share. */
public final class Chance {
    private static final int FEW_TRIALS = 16;

    private final UniformRandomProvider source;
    private final ZigguratSampler.NormalizedGaussian gaussian;

    public Chance(long seed) {
        this.source = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
        this.gaussian = ZigguratSampler.NormalizedGaussian.of(source);
    }

    /** Uniform on [0, 1). */
    public double uniform() {
        return source.nextDouble();
    }

    /** A whole number within [0, bound). */
    public int below(int bound) {
        return source.nextInt(bound);
    }

    /** Standard normal. */
    public double normal() {
        return gaussian.sample();
    }

    /** Gamma with this shape and scale 1. */
    public double gamma(double shape) {
        return AhrensDieterMarsagliaTsangGammaSampler.of(source, shape, 1).sample();
    }

    /** Beta, the share of one gamma in the sum of two. */
    public double beta(double alpha, double beta) {
        double first = gamma(alpha);
        double second = gamma(beta);
        double sum = first + second;
        return sum > 0 ? first / sum : alpha / (alpha + beta);
    }

    /** Binomial, halving the trials at a beta-distributed order statistic (Relles 1972) until few are left. */
    public int binomial(int trials, double probability) {
        int left = trials;
        double chance = Math.min(1, Math.max(0, probability));
        int successes = 0;
        while (left > FEW_TRIALS && chance > 0 && chance < 1) {
            int rank = left / 2 + 1;
            double split = beta(rank, left + 1 - rank);
            if (split >= chance) {
                left = rank - 1;
                chance /= split;
            } else {
                successes += rank;
                left -= rank;
                chance = (chance - split) / (1 - split);
            }
        }
        for (int i = 0; i < left; i++) {
            successes += source.nextDouble() < chance ? 1 : 0;
        }
        return successes;
    }

    /** Binomial with a chance that varies about its mean so that two trials correlate this much. */
    public int betaBinomial(int trials, double mean, double correlation) {
        double size = (1 - correlation) / correlation;
        boolean isCertain = mean <= 0 || mean >= 1;
        return binomial(trials, isCertain ? mean : beta(mean * size, (1 - mean) * size));
    }

    /**
     * The share of a uniform distribution below the r-th smallest of n animals that resemble each other:
     * the beta distribution of that rank, at the size n/(1 + (n − 1)·correlation) they are worth.
     */
    public double orderStatistic(double rank, double size, double correlation) {
        double worth = 1 / (1 + (size - 1) * correlation);
        return beta(rank * worth, (size + 1 - rank) * worth);
    }
}
