package org.moultwright.ui.forecast;

import org.moultwright.compute.forecast.CountInterval;

/** How sure a keeper wants to be of having enough. */
enum Safety {
    EIGHTY(80, 0.8416),
    NINETY(90, 1.2816),
    NINETY_FIVE(95, 1.6449);

    private final int percent;

    /** Of the standard normal law. */
    private final double quantile;

    Safety(int percent, double quantile) {
        this.percent = percent;
        this.quantile = quantile;
    }

    String words() {
        return percent + " %";
    }

    /** Enough with this probability, the upper half of the interval taken as that of a normal law. */
    double enough(CountInterval count) {
        return count.p50() + quantile / NINETY.quantile * (count.p90() - count.p50());
    }
}
