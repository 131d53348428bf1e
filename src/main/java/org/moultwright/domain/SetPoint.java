package org.moultwright.domain;

/**
 * What a container was set to.
 *
 * @param container the container's code
 * @param span from when until when
 * @param temperatureCelsius in °C, within [-10, 60]
 * @param humidityPercent relative humidity in %, or NaN where none was set
 */
public record SetPoint(String container, Span span, double temperatureCelsius, double humidityPercent) {
    public SetPoint {
        Require.text("container", container);
        Require.within("temperatureCelsius", temperatureCelsius, -10, 60);
        if (!Double.isNaN(humidityPercent)) {
            Require.within("humidityPercent", humidityPercent, 0, 100);
        }
    }
}
