package org.moultwright.compute.forecast;

import java.util.Arrays;

/** Quantiles of draws, straight between neighbours. */
final class Quantiles {
    private final double[] sorted;

    private Quantiles(double[] sorted) {
        this.sorted = sorted;
    }

    /** Of at least one draw. */
    static Quantiles of(double[] draws) {
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        return new Quantiles(sorted);
    }

    double percent(double percent) {
        double position = percent / 100 * (sorted.length - 1);
        int below = (int) position;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (position - below) * (sorted[above] - sorted[below]);
    }

    CountInterval counts() {
        return new CountInterval(percent(10), percent(50), percent(90));
    }
}
