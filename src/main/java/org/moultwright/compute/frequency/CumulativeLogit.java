package org.moultwright.compute.frequency;

import java.util.List;
import org.moultwright.domain.Require;

/**
 * The likelihood of stage samples in the parameters α_j = a_j/b and β = 1/b, in which it has a single
 * maximum: the linear predictor is (α_j − β t)/s(t).
 */
final class CumulativeLogit {
    private final Spread spread;
    private final List<StageSample> samples;
    private final int boundaries;

    CumulativeLogit(Spread spread, List<StageSample> samples) {
        Require.atLeast("samples", samples.size(), 1);
        this.spread = spread;
        this.samples = List.copyOf(samples);
        int stages = samples.get(0).counts().size();
        this.boundaries = Require.atLeast("stages", stages, 2) - 1;
        for (int stage = 0; stage < stages; stage++) {
            Require.that(seen(stage) > 0, "stage " + stage + " is in no sample but must be in at least one");
        }
    }

    int parameterCount() {
        return boundaries + 1;
    }

    /** Boundaries where a straight line through the mean stage of the samples puts them. */
    double[] start() {
        double meanTime = samples.stream()
                        .mapToDouble(sample -> sample.time() * sample.total())
                        .sum()
                / samples.stream().mapToInt(StageSample::total).sum();
        double slope = 2 * boundaries * spread.at(meanTime) / meanTime;
        double[] parameters = new double[parameterCount()];
        for (int j = 0; j < boundaries; j++) {
            parameters[j] = slope * meanTime * 2 * (j + 1) / (boundaries + 1);
        }
        parameters[boundaries] = slope;
        return parameters;
    }

    /** Σ n log P; minus infinity where a stage seen is given no probability. */
    double logLikelihood(double[] parameters) {
        double sum = 0;
        for (StageSample sample : samples) {
            for (int stage = 0; stage <= boundaries; stage++) {
                int count = sample.counts().get(stage);
                double probability = probability(parameters, sample, stage);
                if (count > 0) {
                    sum += probability > 0 ? count * Math.log(probability) : Double.NEGATIVE_INFINITY;
                }
            }
        }
        return sum;
    }

    double probability(double[] parameters, StageSample sample, int stage) {
        return upTo(parameters, sample, stage) - upTo(parameters, sample, stage - 1);
    }

    /** The derivative of {@link #probability} by each parameter. */
    double[] gradient(double[] parameters, StageSample sample, int stage) {
        double[] gradient = new double[parameterCount()];
        addGradientUpTo(parameters, sample, stage, 1, gradient);
        addGradientUpTo(parameters, sample, stage - 1, -1, gradient);
        return gradient;
    }

    List<StageSample> samples() {
        return samples;
    }

    private double upTo(double[] parameters, StageSample sample, int stage) {
        if (stage < 0) {
            return 0;
        }
        return stage == boundaries ? 1 : Logistic.of(predictor(parameters, sample, stage));
    }

    private void addGradientUpTo(double[] parameters, StageSample sample, int stage, int sign, double[] into) {
        if (stage >= 0 && stage < boundaries) {
            double density = Logistic.density(predictor(parameters, sample, stage)) / spread.at(sample.time());
            into[stage] += sign * density;
            into[boundaries] -= sign * density * sample.time();
        }
    }

    private double predictor(double[] parameters, StageSample sample, int stage) {
        return (parameters[stage] - parameters[boundaries] * sample.time()) / spread.at(sample.time());
    }

    private int seen(int stage) {
        return samples.stream().mapToInt(sample -> sample.counts().get(stage)).sum();
    }
}
