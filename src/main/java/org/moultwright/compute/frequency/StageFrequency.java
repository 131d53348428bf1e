package org.moultwright.compute.frequency;

import java.util.Arrays;
import java.util.List;

/**
 * P(stage ≤ j at time t) = 1/(1 + exp(−(a_j − t)/(b s(t)))), with s(t) by its {@link Spread}.
 *
 * <p>For {@link Spread#ROOT_OF_TIME} this is the model of Dennis, Kemp &amp; Beckwith 1986 (Environ. Entomol.
 * 15:540–546); for {@link Spread#CONSTANT} the cumulative logit of Candy 1991 with cut points a_j/b and
 * slope −1/b.
 *
 * @param spread how the spread grows with time
 * @param medians a_j, the time at which half the population has left stage j, one fewer than the stages
 * @param scale b, above 0
 * @param logLikelihood of the samples it was fitted to, without the multinomial coefficients
 */
public record StageFrequency(Spread spread, List<Double> medians, double scale, double logLikelihood) {

    public StageFrequency {
        medians = List.copyOf(medians);
    }

    /**
     * Fits the model by maximum likelihood.
     *
     * @param samples independent samples that all count the same two or more stages, each stage seen at
     *     least once
     */
    public static StageFrequency fit(Spread spread, List<StageSample> samples) {
        double[] parameters = FisherScoring.maximum(new CumulativeLogit(spread, samples));
        double slope = parameters[parameters.length - 1];
        List<Double> medians = Arrays.stream(parameters, 0, parameters.length - 1)
                .mapToObj(cut -> cut / slope)
                .toList();
        double logLikelihood = new CumulativeLogit(spread, samples).logLikelihood(parameters);
        return new StageFrequency(spread, medians, 1 / slope, logLikelihood);
    }

    /** The share of the population in stage {@code stage} (from 0) or an earlier one at a time. */
    public double shareUpTo(int stage, double time) {
        if (stage >= medians.size()) {
            return 1;
        }
        return Logistic.of((medians.get(stage) - time) / (scale * spread.at(time)));
    }
}
