package org.moultwright.compute.stage;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.AhrensDieterMarsagliaTsangGammaSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/** Random draws from one seeded source: the same seed gives the same draws. Not safe to share. */
public final class Chance {
    private static final double FEW_EXPECTED = 64;

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

    /** Binomial, halving the trials at a beta-distributed order statistic (Relles 1972) until few are expected. */
    public int binomial(int trials, double probability) {
        double chance = Math.min(1, Math.max(0, probability));
        return chance > 0.5 ? trials - rarely(trials, 1 - chance) : rarely(trials, chance);
    }

    private int rarely(int trials, double probability) {
        int left = trials;
        double chance = probability;
        int successes = 0;
        while (left * chance > FEW_EXPECTED) {
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
        return successes + counted(left, chance);
    }

    /** The number at which as much of the binomial law lies below as a uniform draw says. */
    private int counted(int trials, double chance) {
        if (chance >= 1) {
            return trials;
        }
        double odds = chance / (1 - chance);
        double probability = Math.exp(trials * Math.log1p(-chance));
        double left = source.nextDouble();
        int successes = 0;
        while (left > probability && successes < trials) {
            left -= probability;
            probability *= odds * (trials - successes) / (successes + 1.0);
            successes++;
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
