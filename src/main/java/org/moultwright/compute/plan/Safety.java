package org.moultwright.compute.plan;

import org.moultwright.compute.forecast.CountInterval;

/** How sure a keeper wants to be of having enough, and of having it in time. */
public enum Safety {
    EIGHTY(0.8, 0.8416, "8 of 10"),
    NINETY(0.9, 1.2816, "9 of 10"),
    NINETY_FIVE(0.95, 1.6449, "19 of 20");

    private final double chance;

    /** Of the standard normal law. */
    private final double quantile;

    private final String outcomes;

    Safety(double chance, double quantile, String outcomes) {
        this.chance = chance;
        this.quantile = quantile;
        this.outcomes = outcomes;
    }

    /** A probability within [0, 1]. */
    public double chance() {
        return chance;
    }

    /** "9 of 10": in so many outcomes it is kept. */
    public String outcomes() {
        return outcomes;
    }

    /** Enough with this probability, the upper half of the interval taken as that of a normal law. */
    public double enough(CountInterval count) {
        return count.p50() + quantile / NINETY.quantile * (count.p90() - count.p50());
    }
}
