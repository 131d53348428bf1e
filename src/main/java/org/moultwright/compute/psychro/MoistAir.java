package org.moultwright.compute.psychro;

import org.moultwright.domain.Require;

/**
 * Air of a temperature and humidity.
 *
 * @param celsius its temperature in °C, within [-40, 85]
 * @param humidityPercent its relative humidity over water in %, above 0 and at most 100
 * @param formula the vapour-pressure formula used both ways
 */
public record MoistAir(double celsius, double humidityPercent, VapourPressure formula) {
    private static final double GRAM_KELVIN_PER_CUBIC_METRE_HECTOPASCAL = 216.679;

    public MoistAir {
        Require.within("celsius", celsius, -40, 85);
        Require.within("humidityPercent", humidityPercent, Double.MIN_NORMAL, 100);
    }

    /** Air by the formula of Sonntag 1990. */
    public static MoistAir of(double celsius, double humidityPercent) {
        return new MoistAir(celsius, humidityPercent, VapourPressure.SONNTAG_1990);
    }

    /** Pressure of its vapour, in hPa. */
    public double vapourHectopascal() {
        return formula.saturationHectopascal(celsius) * humidityPercent / 100;
    }

    /** The wall temperature in °C at which its water begins to settle. */
    public double dewPointCelsius() {
        return formula.dewPointCelsius(vapourHectopascal());
    }

    /**
     * Standard uncertainty of the dew point in K from independent ones of temperature and humidity, to first
     * order (JCGM 100:2008, 5.1.2).
     */
    public double dewPointSdCelsius(double sdCelsius, double humiditySdPercent) {
        double slopeAtDew = formula.slopeHectopascalPerKelvin(dewPointCelsius());
        double perKelvin = formula.slopeHectopascalPerKelvin(celsius) * humidityPercent / 100 / slopeAtDew;
        double perPercent = formula.saturationHectopascal(celsius) / 100 / slopeAtDew;
        return Math.hypot(perKelvin * sdCelsius, perPercent * humiditySdPercent);
    }

    /** Water in a cubic metre, in g. */
    public double absoluteHumidityGramsPerCubicMetre() {
        return GRAM_KELVIN_PER_CUBIC_METRE_HECTOPASCAL
                * vapourHectopascal()
                / (celsius + VapourPressure.ZERO_CELSIUS_KELVIN);
    }

    /** How much vapour pressure it lacks to saturation, in kPa. */
    public double vapourDeficitKilopascal() {
        return (formula.saturationHectopascal(celsius) - vapourHectopascal()) / 10;
    }

    /** Whether a wall will be wet, given the uncertainty of the difference in K. The margin is ours. */
    public WallState wall(double wallCelsius, double uncertaintyCelsius) {
        double aboveDew = wallCelsius - dewPointCelsius();
        if (aboveDew < -uncertaintyCelsius) {
            return WallState.WILL_WET;
        }
        return aboveDew < uncertaintyCelsius + WallState.MARGIN_CELSIUS ? WallState.MAY_WET : WallState.DRY;
    }
}
