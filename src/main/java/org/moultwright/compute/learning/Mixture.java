package org.moultwright.compute.learning;

import java.util.List;
import org.moultwright.compute.stage.NormalBelief;
import org.moultwright.compute.stage.NormalTails;

/**
 * One normal belief that stands for several weighted ones: with the mean and the correlations of their mixture, and each
 * quantity as sure as the middle 80 % of the mixture.
 *
 * <p>A few beliefs far wider than most would make the mixture's own covariance too wide for that.
 */
final class Mixture {
    /** The 90th percentile of the standard normal law. */
    private static final double NINE_TENTHS = 1.2815515655446004;

    private static final double BEYOND = 0.2;
    private static final int HALVINGS = 40;

    private final List<NormalBelief> beliefs;
    private final double[] weights;
    private final double[] mean;

    private Mixture(List<NormalBelief> beliefs, double[] weights) {
        this.beliefs = beliefs;
        this.weights = weights;
        this.mean = new double[beliefs.get(0).size()];
        for (int n = 0; n < weights.length; n++) {
            for (int k = 0; k < mean.length; k++) {
                mean[k] += weights[n] * beliefs.get(n).mean()[k];
            }
        }
    }

    static NormalBelief matched(List<NormalBelief> beliefs, List<Double> logWeights) {
        double highest =
                logWeights.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double[] weights = logWeights.stream()
                .mapToDouble(weight -> Math.exp(weight - highest))
                .toArray();
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        for (int n = 0; n < weights.length; n++) {
            weights[n] /= sum;
        }
        return new Mixture(beliefs, weights).matched();
    }

    private NormalBelief matched() {
        double[][] covariance = covariance();
        double[] narrowing = new double[mean.length];
        for (int k = 0; k < mean.length; k++) {
            narrowing[k] = sdOfMiddle(k) / Math.sqrt(covariance[k][k]);
        }
        for (int k = 0; k < mean.length; k++) {
            for (int l = 0; l < mean.length; l++) {
                covariance[k][l] *= narrowing[k] * narrowing[l];
            }
        }
        return new NormalBelief(mean, covariance);
    }

    private double[][] covariance() {
        double[][] covariance = new double[mean.length][mean.length];
        for (int n = 0; n < weights.length; n++) {
            for (int k = 0; k < mean.length; k++) {
                for (int l = 0; l < mean.length; l++) {
                    covariance[k][l] += weights[n] * (beliefs.get(n).covariance()[k][l] + away(n, k) * away(n, l));
                }
            }
        }
        return covariance;
    }

    /** The standard deviation of the normal law about the mean whose middle 80 % is as wide as the mixture's. */
    private double sdOfMiddle(int quantity) {
        double low = 0;
        double high = 0;
        for (int n = 0; n < weights.length; n++) {
            high = Math.max(high, sd(n, quantity) + Math.abs(away(n, quantity)));
        }
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (beyond(NINE_TENTHS * middle, quantity) > BEYOND) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** How much of the mixture lies farther from its mean than so much. */
    private double beyond(double distance, int quantity) {
        double share = 0;
        for (int n = 0; n < weights.length; n++) {
            double sd = sd(n, quantity);
            double away = away(n, quantity);
            share += weights[n]
                    * (NormalTails.survival((distance - away) / sd) + NormalTails.survival((distance + away) / sd));
        }
        return share;
    }

    private double sd(int belief, int quantity) {
        return Math.sqrt(beliefs.get(belief).covariance()[quantity][quantity]);
    }

    private double away(int belief, int quantity) {
        return beliefs.get(belief).mean()[quantity] - mean[quantity];
    }
}
