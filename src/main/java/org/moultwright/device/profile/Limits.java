package org.moultwright.device.profile;

import org.moultwright.domain.Reading;
import org.moultwright.domain.Require;

/**
 * What a probe can tell at all.
 *
 * @param lowestCelsius the least it measures, not below what a reading may hold
 * @param highestCelsius the most it measures, not above what a reading may hold
 * @param disconnectedCelsius what it says when its sensor is gone, NaN if nothing special
 * @param powerOnCelsius what it says before its first measurement, NaN if nothing special
 */
public record Limits(double lowestCelsius, double highestCelsius, double disconnectedCelsius, double powerOnCelsius) {
    /** Room for the rounding of a value that was told in °F to one decimal. */
    private static final double TOLERANCE_KELVIN = 0.06;

    public Limits {
        Require.within("lowestCelsius", lowestCelsius, Reading.LOWEST_CELSIUS, Reading.HIGHEST_CELSIUS);
        Require.within("highestCelsius", highestCelsius, lowestCelsius, Reading.HIGHEST_CELSIUS);
    }

    /** Whether the probe can have measured this. */
    boolean allow(double temperatureCelsius) {
        return temperatureCelsius >= lowestCelsius && temperatureCelsius <= highestCelsius;
    }

    /** Whether this is what the probe says when its sensor is gone. */
    boolean isDisconnected(double temperatureCelsius) {
        return isNear(temperatureCelsius, disconnectedCelsius);
    }

    /** Whether this is what the probe says before its first measurement. */
    public boolean isPowerOn(double temperatureCelsius) {
        return isNear(temperatureCelsius, powerOnCelsius);
    }

    private static boolean isNear(double value, double mark) {
        return Math.abs(value - mark) <= TOLERANCE_KELVIN;
    }
}
