package org.moultwright.compute.survival;

import java.util.Arrays;

/**
 * The probabilities of cells from observations that each name the cells they may have fallen into, by the
 * self-consistency steps of Turnbull 1976 until none moves any probability.
 */
final class SelfConsistency {
    private static final int MOST_STEPS = 200_000;
    private static final double STILL = 1e-15;
    /** A cell below this holds nothing: it would reach 0 in the limit only. */
    private static final double NOTHING = 1e-9;

    private final boolean[][] covers;
    private final double[] masses;

    private SelfConsistency(boolean[][] covers) {
        this.covers = covers;
        this.masses = new double[covers[0].length];
        Arrays.fill(masses, 1.0 / masses.length);
    }

    /** Fits the cells' probabilities; {@code covers[i][j]} says whether observation i may be in cell j. */
    static SelfConsistency fit(boolean[][] covers) {
        SelfConsistency fit = new SelfConsistency(covers);
        int steps = 0;
        while (fit.step() > STILL && steps < MOST_STEPS) {
            steps++;
        }
        return fit;
    }

    double[] masses() {
        return masses.clone();
    }

    double logLikelihood() {
        double sum = 0;
        for (boolean[] covered : covers) {
            sum += Math.log(probability(covered));
        }
        return sum;
    }

    /** One step; returns the largest change. */
    private double step() {
        double[] gain = new double[masses.length];
        for (boolean[] covered : covers) {
            double share = 1 / (covers.length * probability(covered));
            for (int j = 0; j < masses.length; j++) {
                gain[j] += covered[j] ? share : 0;
            }
        }
        double largestChange = 0;
        for (int j = 0; j < masses.length; j++) {
            boolean isDead = masses[j] < NOTHING && gain[j] < 1;
            double next = isDead ? 0 : masses[j] * gain[j];
            largestChange = Math.max(largestChange, Math.abs(next - masses[j]));
            masses[j] = next;
        }
        return largestChange;
    }

    private double probability(boolean[] covered) {
        double sum = 0;
        for (int j = 0; j < masses.length; j++) {
            sum += covered[j] ? masses[j] : 0;
        }
        return sum;
    }
}
