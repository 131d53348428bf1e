package org.moultwright.compute.climate;

import java.time.Duration;
import java.time.Instant;

/**
 * A span whose temperature comes from one source.
 *
 * @param from its start
 * @param to its end
 * @param source where the temperature comes from
 * @param sdCelsius standard uncertainty of the temperature, common to the whole span, in K
 */
public record LivedSpan(Instant from, Instant to, TemperatureSource source, double sdCelsius) {

    /** Its length in days of 24 hours. */
    public double days() {
        return Duration.between(from, to).toMillis()
                / (double) Duration.ofDays(1).toMillis();
    }
}
