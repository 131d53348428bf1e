package org.moultwright.compute.stage;

import java.util.List;

/**
 * The plain way to draw from a brood's posterior, as a baseline: a random walk with steps of the prior's own
 * scale times a constant, tuned to accept about a quarter.
 */
public final class PlainMetropolis {
    private static final int WARM_UP = 5000;

    private final StagePosterior posterior;
    private final Chance chance = new Chance(11);
    private double[] at;
    private double height;
    private double step = 0.2;

    public PlainMetropolis(List<TrayHistory> trays, StagePrior prior) {
        this.posterior = new StagePosterior(trays, prior);
        this.at = ModeFinder.of(posterior).point();
        this.height = posterior.logDensity(at);
        for (int i = 0; i < WARM_UP; i++) {
            step *= move() ? 1.01 : 0.9967;
        }
    }

    /** How many independent draws of the last median so many steps are worth, by the variance of batch means. */
    public double effectiveDraws(int steps) {
        int batches = (int) Math.sqrt(steps);
        int length = steps / batches;
        double[] means = new double[batches];
        double sum = 0;
        double squares = 0;
        for (int batch = 0; batch < batches; batch++) {
            for (int i = 0; i < length; i++) {
                move();
                double[] medians = posterior.coordinates().parameters(at).logMedian();
                double value = medians[medians.length - 1];
                means[batch] += value / length;
                sum += value;
                squares += value * value;
            }
        }
        int all = batches * length;
        double mean = sum / all;
        double variance = squares / all - mean * mean;
        double between = 0;
        for (double batchMean : means) {
            between += (batchMean - mean) * (batchMean - mean) / (batches - 1);
        }
        return all * variance / (length * between);
    }

    private boolean move() {
        double[] candidate = at.clone();
        for (int i = 0; i < candidate.length; i++) {
            candidate[i] += step * chance.normal();
        }
        double reached = posterior.logDensity(candidate);
        boolean isAccepted = Math.log(chance.uniform()) < reached - height;
        if (isAccepted) {
            at = candidate;
            height = reached;
        }
        return isAccepted;
    }
}
