package org.moultwright.compute.frequency;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;

/** Climbs a multinomial likelihood by Fisher scoring, halving any step that would lead downhill. */
final class FisherScoring {
    private static final int MOST_STEPS = 500;
    private static final int MOST_HALVINGS = 60;
    private static final double NO_PROBABILITY = 1e-300;
    private static final double NO_GAIN = 1e-13;

    private FisherScoring() {}

    static double[] maximum(CumulativeLogit likelihood) {
        double[] parameters = likelihood.start();
        for (int step = 0; step < MOST_STEPS; step++) {
            double before = likelihood.logLikelihood(parameters);
            double[] next = uphill(likelihood, parameters, direction(likelihood, parameters), before);
            if (likelihood.logLikelihood(next) - before <= NO_GAIN * Math.abs(before)) {
                return next;
            }
            parameters = next;
        }
        return parameters;
    }

    private static double[] uphill(CumulativeLogit likelihood, double[] from, double[] direction, double before) {
        double share = 1;
        for (int halving = 0; halving < MOST_HALVINGS; halving++) {
            double[] next = new double[from.length];
            for (int i = 0; i < next.length; i++) {
                next[i] = from[i] + share * direction[i];
            }
            if (likelihood.logLikelihood(next) >= before) {
                return next;
            }
            share /= 2;
        }
        return from;
    }

    /** The score divided by the expected information. */
    private static double[] direction(CumulativeLogit likelihood, double[] parameters) {
        int size = parameters.length;
        double[] score = new double[size];
        double[][] information = new double[size][size];
        for (StageSample sample : likelihood.samples()) {
            int total = sample.total();
            for (int stage = 0; stage < sample.counts().size(); stage++) {
                double probability = Math.max(likelihood.probability(parameters, sample, stage), NO_PROBABILITY);
                double[] gradient = likelihood.gradient(parameters, sample, stage);
                for (int i = 0; i < size; i++) {
                    score[i] += sample.counts().get(stage) * gradient[i] / probability;
                    for (int j = 0; j < size; j++) {
                        information[i][j] += total * gradient[i] * gradient[j] / probability;
                    }
                }
            }
        }
        return new QRDecomposition(new Array2DRowRealMatrix(information))
                .getSolver()
                .solve(new ArrayRealVector(score))
                .toArray();
    }
}
