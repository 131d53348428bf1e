package org.moultwright.compute.forecast;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.Require;

/**
 * When something happens or happened, with its uncertainty: the instants by which it has happened with a probability of 0
 * to 100 %. Immutable.
 */
public final class InstantInterval {
    private static final Duration FORESEEABLE = Duration.ofDays(365);
    private static final int HIGHEST = 100;
    private static final double MILLIS_PER_DAY = Duration.ofDays(1).toMillis();

    /** By percent, in order. Plain numbers: a room has some hundred thousand of them. */
    private final long[] epochMillis;

    private InstantInterval(long[] epochMillis) {
        this.epochMillis = epochMillis;
    }

    /** One of 101 percentiles in order. */
    public InstantInterval(List<Instant> percentiles) {
        this(percentiles.stream().mapToLong(Instant::toEpochMilli).toArray());
        Require.that(
                percentiles.size() == HIGHEST + 1,
                "percentiles holds " + percentiles.size() + " but needs " + (HIGHEST + 1));
    }

    /** One known by three points only: straight between them and as far beyond. */
    public InstantInterval(Instant p10, Instant p50, Instant p90) {
        this(IntStream.rangeClosed(0, HIGHEST)
                .mapToDouble(percent -> percent < 50
                        ? p50.toEpochMilli() - (50 - percent) / 40.0 * millisBetween(p10, p50)
                        : p50.toEpochMilli() + (percent - 50) / 40.0 * millisBetween(p50, p90))
                .mapToLong(Math::round)
                .toArray());
    }

    /** One without uncertainty. */
    public static InstantInterval certain(Instant at) {
        return of(percent -> at.toEpochMilli());
    }

    /** One known by some of its percentiles, evenly apart from 0 to 100 %: straight between them. */
    public static InstantInterval through(List<Instant> evenly) {
        return of(evenly.stream().mapToDouble(Instant::toEpochMilli).toArray());
    }

    /** Of draws, in milliseconds of the epoch. */
    static InstantInterval of(double[] epochMillis) {
        Quantiles quantiles = Quantiles.of(epochMillis);
        return of(percent -> Math.round(quantiles.percent(percent)));
    }

    private static InstantInterval of(IntToLongFunction millisAtPercent) {
        return new InstantInterval(
                IntStream.rangeClosed(0, HIGHEST).mapToLong(millisAtPercent).toArray());
    }

    /** The instant by which it has happened with a probability of so many percent, 0 to 100. */
    public Instant at(int percent) {
        return Instant.ofEpochMilli(epochMillis[percent]);
    }

    /** The lower end of the 80 % interval. */
    public Instant p10() {
        return at(10);
    }

    /** Whether its middle lies more than a year after an instant: for animals that moult within months, as good as never. */
    public boolean isFarFrom(Instant now) {
        return p50().isAfter(now.plus(FORESEEABLE));
    }

    /** As likely before as after. */
    public Instant p50() {
        return at(50);
    }

    /** The upper end of the 80 % interval. */
    public Instant p90() {
        return at(90);
    }

    /** The probability, within [0, 1], that it has happened by an instant. */
    public double chanceBy(Instant instant) {
        long millis = instant.toEpochMilli();
        if (millis < epochMillis[0]) {
            return 0;
        }
        int below = 0;
        while (below < HIGHEST && millis >= epochMillis[below + 1]) {
            below++;
        }
        if (below == HIGHEST) {
            return 1;
        }
        double step = (double) epochMillis[below + 1] - epochMillis[below];
        return (below + ((double) millis - epochMillis[below]) / step) / HIGHEST;
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
            double late = ((double) epochMillis[percent] - truth.toEpochMilli()) / MILLIS_PER_DAY;
            sum += 2 * (late > 0 ? late * (1 - percent / 100.0) : -late * percent / 100.0);
        }
        return sum / (HIGHEST - 1);
    }

    private static double millisBetween(Instant from, Instant to) {
        return (double) to.toEpochMilli() - from.toEpochMilli();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof InstantInterval interval && Arrays.equals(epochMillis, interval.epochMillis);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(epochMillis);
    }

    @Override
    public String toString() {
        return "%s to %s, half at %s".formatted(p10(), p90(), p50());
    }
}
