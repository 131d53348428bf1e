package org.moultwright.domain;

import java.time.Instant;

/**
 * One reading of the air in a container, exactly as its probe reported it, before any correction.
 *
 * @param takenAt when the sample was taken, by the logger's clock
 * @param temperatureCelsius air temperature in °C, or NaN where the instrument gave no number
 * @param humidityPercent relative humidity in %, or NaN where not measured
 * @param quality how far it may be trusted; a good one has a temperature within
 *     [{@value #LOWEST_CELSIUS}, {@value #HIGHEST_CELSIUS}]
 */
public record Reading(Instant takenAt, double temperatureCelsius, double humidityPercent, Quality quality) {
    public static final double LOWEST_CELSIUS = -40;
    public static final double HIGHEST_CELSIUS = 85;

    public Reading {
        if (quality == Quality.GOOD) {
            Require.within("temperatureCelsius", temperatureCelsius, LOWEST_CELSIUS, HIGHEST_CELSIUS);
            if (!Double.isNaN(humidityPercent)) {
                Require.within("humidityPercent", humidityPercent, 0, 100);
            }
        }
    }
}
