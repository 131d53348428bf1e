package org.moultwright.compute.stage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Adaptive importance sampling: points from multivariate t distributions, weighted to stand for a density.
 *
 * <p>The first round samples around the mode, each later one around the weighted points so far; all points
 * are weighted against the mixture of all rounds (Cornuet et al. 2012). Weights are cut at the mean times
 * √n (Ionides 2008). Where one point would still speak for nearly all, a chain over the same points that
 * takes each by its weight against the last replaces the weighting.
 */
final class ImportanceSampler {
    private static final double DEGREES = 10;
    private static final double WIDENING = 1.10;
    private static final int[] ROUNDS = {300, 400, 800};
    private static final double LEAST_VARIANCE = 1e-5;
    private static final double LEAST_EFFECTIVE_SHARE = 0.05;

    private final ToDoubleFunction<double[]> logDensity;
    private final Chance chance;
    private final List<MultivariateT> proposals = new ArrayList<>();
    private final List<double[]> points = new ArrayList<>();
    private final List<Double> logDensities = new ArrayList<>();

    /** By proposal, its log density at each point. */
    private final List<double[]> proposed = new ArrayList<>();

    ImportanceSampler(ToDoubleFunction<double[]> logDensity, Chance chance) {
        this.logDensity = logDensity;
        this.chance = chance;
    }

    /**
     * The points that stand for the density, each counting the same.
     *
     * @param isCoarse whether the weighting failed and the chain stepped in
     */
    record Sample(List<double[]> points, double effectiveShare, boolean isCoarse) {}

    Sample sample(double[] mode, double[][] spread, int size) {
        double[] weights = {};
        for (int round = 0; round < ROUNDS.length; round++) {
            draw(round == 0 ? widened(mode, spread) : refitted(weights), ROUNDS[round]);
            weights = weights(round + 1);
        }
        double effectiveShare = effectiveShare(weights);
        boolean isCoarse = effectiveShare < LEAST_EFFECTIVE_SHARE;
        return new Sample(isCoarse ? chained(weights, size) : resampled(weights, size), effectiveShare, isCoarse);
    }

    private void draw(MultivariateT proposal, int count) {
        proposals.add(proposal);
        proposed.add(new double[0]);
        for (int i = 0; i < count; i++) {
            double[] point = proposal.draw(chance);
            points.add(point);
            logDensities.add(logDensity.applyAsDouble(point));
        }
        for (int round = 0; round < proposals.size(); round++) {
            proposed.set(round, atNewPointsToo(proposed.get(round), proposals.get(round)));
        }
    }

    private double[] atNewPointsToo(double[] known, MultivariateT proposal) {
        double[] all = Arrays.copyOf(known, points.size());
        for (int i = known.length; i < all.length; i++) {
            all[i] = proposal.logDensity(points.get(i));
        }
        return all;
    }

    private double[] weights(int rounds) {
        double[] logWeights = new double[points.size()];
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < logWeights.length; i++) {
            logWeights[i] = logDensities.get(i) - logMixture(i, rounds);
            highest = Math.max(highest, logWeights[i]);
        }
        double[] weights = new double[logWeights.length];
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.exp(logWeights[i] - highest);
            sum += weights[i];
        }
        double cut = sum / weights.length * Math.sqrt(weights.length);
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.min(weights[i], cut);
        }
        return normalized(weights);
    }

    private double logMixture(int point, int rounds) {
        double sum = 0;
        double reference = proposed.get(rounds - 1)[point];
        for (int round = 0; round < rounds; round++) {
            sum += ROUNDS[round] * Math.exp(proposed.get(round)[point] - reference);
        }
        return reference + Math.log(sum);
    }

    private MultivariateT refitted(double[] weights) {
        int size = points.get(0).length;
        double[] mean = new double[size];
        for (int n = 0; n < weights.length; n++) {
            for (int i = 0; i < size; i++) {
                mean[i] += weights[n] * points.get(n)[i];
            }
        }
        double[][] covariance = new double[size][size];
        for (int n = 0; n < weights.length; n++) {
            double[] point = points.get(n);
            for (int i = 0; i < size; i++) {
                double weighted = weights[n] * (point[i] - mean[i]);
                for (int j = 0; j <= i; j++) {
                    covariance[i][j] += weighted * (point[j] - mean[j]);
                }
            }
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                covariance[j][i] = covariance[i][j];
            }
        }
        return widened(mean, covariance);
    }

    private static MultivariateT widened(double[] centre, double[][] covariance) {
        double[][] scale = new double[centre.length][];
        for (int i = 0; i < scale.length; i++) {
            scale[i] = covariance[i].clone();
            for (int j = 0; j < scale.length; j++) {
                scale[i][j] *= WIDENING * WIDENING;
            }
        }
        return new MultivariateT(centre, scale, DEGREES, LEAST_VARIANCE);
    }

    /** Systematic resampling: one uniform start, equal strides through the summed weights. */
    private List<double[]> resampled(double[] weights, int size) {
        List<double[]> chosen = new ArrayList<>();
        double start = chance.uniform();
        double reached = weights[0];
        int index = 0;
        for (int i = 0; i < size; i++) {
            double target = (i + start) / size;
            while (reached < target && index < weights.length - 1) {
                index++;
                reached += weights[index];
            }
            chosen.add(points.get(index));
        }
        return chosen;
    }

    private List<double[]> chained(double[] weights, int size) {
        List<double[]> chain = new ArrayList<>();
        int current = 0;
        for (int i = 0; i < size + weights.length; i++) {
            int candidate = chance.below(weights.length);
            if (chance.uniform() * weights[current] < weights[candidate]) {
                current = candidate;
            }
            if (i >= weights.length) {
                chain.add(points.get(current));
            }
        }
        return chain;
    }

    private static double[] normalized(double[] weights) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        double[] shares = new double[weights.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = weights[i] / sum;
        }
        return shares;
    }

    private static double effectiveShare(double[] weights) {
        double squares = 0;
        for (double weight : weights) {
            squares += weight * weight;
        }
        return 1 / squares / weights.length;
    }
}
