package org.moultwright.compute.scoring;

import java.time.Duration;
import java.time.Instant;
import org.moultwright.compute.forecast.InstantInterval;

/**
 * A forecast of one event and what became of it.
 *
 * @param madeAt when it was made
 * @param forecast what it said
 * @param truth when the event happened, as the later looks bracket it
 */
public record Outcome(Instant madeAt, InstantInterval forecast, Instant truth) {
    private static final double MILLIS_PER_DAY = Duration.ofDays(1).toMillis();

    /** Days by which the middle of the forecast was late, negative if it was early. */
    public double lateDays() {
        return Duration.between(truth, forecast.p50()).toMillis() / MILLIS_PER_DAY;
    }

    /** Days from the forecast to the event. */
    public double leadDays() {
        return Duration.between(madeAt, truth).toMillis() / MILLIS_PER_DAY;
    }

    /** Whether the truth lay within the 80 % interval. */
    public boolean isCovered() {
        return !truth.isBefore(forecast.p10()) && !truth.isAfter(forecast.p90());
    }

    /** The probability integral transform: the probability forecast for the event to have happened by then. */
    public double pit() {
        return forecast.chanceBy(truth);
    }
}
