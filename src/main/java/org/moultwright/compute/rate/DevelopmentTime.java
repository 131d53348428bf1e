package org.moultwright.compute.rate;

import org.moultwright.domain.Require;

/**
 * How long a stage lasted at a constant temperature.
 *
 * @param temperatureCelsius the temperature in °C
 * @param days the duration in days, above 0
 */
public record DevelopmentTime(double temperatureCelsius, double days) {
    public DevelopmentTime {
        Require.that(days > 0, "days is " + days + " but must be above 0");
    }
}
