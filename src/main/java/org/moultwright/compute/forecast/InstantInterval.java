package org.moultwright.compute.forecast;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.moultwright.domain.Require;

/**
 * When something happens or happened, with its uncertainty.
 *
 * @param percentiles the instants by which it has happened with a probability of 0 to 100 %, 101 in order
 */
public record InstantInterval(List<Instant> percentiles) {
    private static final Duration FORESEEABLE = Duration.ofDays(365);
    private static final int HIGHEST = 100;
    private static final double MILLIS_PER_DAY = Duration.ofDays(1).toMillis();

    public InstantInterval {
        Require.that(
                percentiles.size() == HIGHEST + 1,
                "percentiles holds " + percentiles.size() + " but needs " + (HIGHEST + 1));
        percentiles = List.copyOf(percentiles);
    }

    /** One known by three points only: straight between them and as far beyond. */
    public InstantInterval(Instant p10, Instant p50, Instant p90) {
        this(throughThree(p10, p50, p90));
    }

    /** One without uncertainty. */
    public static InstantInterval certain(Instant at) {
        return new InstantInterval(Collections.nCopies(HIGHEST + 1, at));
    }

    /** One known by some of its percentiles, evenly apart from 0 to 100 %: straight between them. */
    public static InstantInterval through(List<Instant> evenly) {
        return of(evenly.stream().mapToDouble(Instant::toEpochMilli).toArray());
    }

    /** Of draws, in milliseconds of the epoch. */
    static InstantInterval of(double[] epochMillis) {
        Quantiles quantiles = Quantiles.of(epochMillis);
        List<Instant> percentiles = new ArrayList<>(HIGHEST + 1);
        for (int percent = 0; percent <= HIGHEST; percent++) {
            percentiles.add(Instant.ofEpochMilli(Math.round(quantiles.percent(percent))));
        }
        return new InstantInterval(percentiles);
    }

    /** The lower end of the 80 % interval. */
    public Instant p10() {
        return percentiles.get(10);
    }

    /** Whether its middle lies more than a year after an instant: for animals that moult within months, as good as never. */
    public boolean isFarFrom(Instant now) {
        return p50().isAfter(now.plus(FORESEEABLE));
    }

    /** As likely before as after. */
    public Instant p50() {
        return percentiles.get(50);
    }

    /** The upper end of the 80 % interval. */
    public Instant p90() {
        return percentiles.get(90);
    }

    /** The probability, within [0, 1], that it has happened by an instant. */
    public double chanceBy(Instant instant) {
        if (instant.isBefore(percentiles.get(0))) {
            return 0;
        }
        int below = 0;
        while (below < HIGHEST && !instant.isBefore(percentiles.get(below + 1))) {
            below++;
        }
        if (below == HIGHEST) {
            return 1;
        }
        double step = millisBetween(percentiles.get(below), percentiles.get(below + 1));
        return (below + millisBetween(percentiles.get(below), instant) / step) / HIGHEST;
    }

    /** The probability that it happens after one instant and by another. */
    public double chanceBetween(Instant from, Instant to) {
        return Math.max(0, chanceBy(to) - chanceBy(from));
    }

    /**
     * Continuous ranked probability score in days: the mean quantile loss, doubled, over the percentiles (Gneiting
     * &amp; Raftery 2007). 0 is perfect; for a certain forecast it is the absolute error.
     */
    public double crpsDays(Instant truth) {
        double sum = 0;
        for (int percent = 1; percent < HIGHEST; percent++) {
            double late = millisBetween(truth, percentiles.get(percent)) / MILLIS_PER_DAY;
            sum += 2 * (late > 0 ? late * (1 - percent / 100.0) : -late * percent / 100.0);
        }
        return sum / (HIGHEST - 1);
    }

    private static double millisBetween(Instant from, Instant to) {
        return (double) to.toEpochMilli() - from.toEpochMilli();
    }

    private static List<Instant> throughThree(Instant p10, Instant p50, Instant p90) {
        List<Instant> percentiles = new ArrayList<>(HIGHEST + 1);
        for (int percent = 0; percent <= HIGHEST; percent++) {
            double millis = percent < 50
                    ? p50.toEpochMilli() - (50 - percent) / 40.0 * millisBetween(p10, p50)
                    : p50.toEpochMilli() + (percent - 50) / 40.0 * millisBetween(p50, p90);
            percentiles.add(Instant.ofEpochMilli(Math.round(millis)));
        }
        return percentiles;
    }
}
