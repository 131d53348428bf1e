package org.moultwright.compute.learning;

import java.util.List;
import org.moultwright.compute.stage.NormalBelief;

/** One normal belief with the mean and covariance of several weighted ones. */
final class Mixture {
    private Mixture() {}

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
        int size = beliefs.get(0).size();
        double[] mean = new double[size];
        for (int n = 0; n < weights.length; n++) {
            for (int k = 0; k < size; k++) {
                mean[k] += weights[n] / sum * beliefs.get(n).mean()[k];
            }
        }
        double[][] covariance = new double[size][size];
        for (int n = 0; n < weights.length; n++) {
            NormalBelief belief = beliefs.get(n);
            for (int k = 0; k < size; k++) {
                for (int l = 0; l < size; l++) {
                    double apart = (belief.mean()[k] - mean[k]) * (belief.mean()[l] - mean[l]);
                    covariance[k][l] += weights[n] / sum * (belief.covariance()[k][l] + apart);
                }
            }
        }
        return new NormalBelief(mean, covariance);
    }
}
