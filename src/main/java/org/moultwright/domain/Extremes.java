package org.moultwright.domain;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * The lowest and the highest a thermometer that remembers both has shown in a container over a span.
 *
 * @param container the container's code
 * @param from since when it remembered, such as the beginning of a day
 * @param to when it was read, after {@code from} and at most {@value #LONGEST_DAYS} days later
 * @param lowestCelsius in °C, as a good reading may be
 * @param highestCelsius in °C, not below the lowest
 * @param lowestPercent relative humidity in %, or NaN where it was not measured
 * @param highestPercent relative humidity in %, not below the lowest, or NaN where that is
 */
public record Extremes(
        String container,
        Instant from,
        Instant to,
        double lowestCelsius,
        double highestCelsius,
        double lowestPercent,
        double highestPercent) {
    /** Beyond that a lowest and a highest say nothing of the days between. */
    public static final int LONGEST_DAYS = 31;

    /** The day on which clocks go back. */
    private static final Duration LONGEST_DAY = Duration.ofHours(25);

    public Extremes {
        Require.text("container", container);
        Require.that(from.isBefore(to), "from " + from + " must be before to " + to);
        Require.that(
                Duration.between(from, to).compareTo(Duration.ofDays(LONGEST_DAYS)) <= 0,
                "to %s must be within %d days of from %s".formatted(to, LONGEST_DAYS, from));
        Require.within("lowestCelsius", lowestCelsius, Reading.LOWEST_CELSIUS, Reading.HIGHEST_CELSIUS);
        Require.within("highestCelsius", highestCelsius, lowestCelsius, Reading.HIGHEST_CELSIUS);
        Require.that(
                Double.isNaN(lowestPercent) == Double.isNaN(highestPercent),
                "lowestPercent and highestPercent must both be there, or neither");
        if (!Double.isNaN(lowestPercent)) {
            Require.within("lowestPercent", lowestPercent, 0, 100);
            Require.within("highestPercent", highestPercent, lowestPercent, 100);
        }
    }

    /** Without humidity. */
    public Extremes(String container, Instant from, Instant to, double lowestCelsius, double highestCelsius) {
        this(container, from, to, lowestCelsius, highestCelsius, Double.NaN, Double.NaN);
    }

    public Duration length() {
        return Duration.between(from, to);
    }

    /**
     * Whether this, written later, takes another's place: it tells of the same container since the same instant, up to
     * the same one, or both are of one day, read twice.
     */
    public boolean replaces(Extremes earlier) {
        boolean isSinceTheSame = container.equals(earlier.container) && from.equals(earlier.from);
        return isSinceTheSame && (to.equals(earlier.to) || (isOfADay() && earlier.isOfADay()));
    }

    /** Of rows in the order written those that none written later replaces. */
    public static List<Extremes> inForce(List<Extremes> written) {
        List<Extremes> inForce = new ArrayList<>();
        for (Extremes one : written) {
            inForce.removeIf(one::replaces);
            inForce.add(one);
        }
        return inForce;
    }

    private boolean isOfADay() {
        return length().compareTo(LONGEST_DAY) <= 0;
    }
}
