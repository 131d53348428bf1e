package org.moultwright.ui.forecast;

import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.ClimatePlan;
import org.moultwright.compute.forecast.PreparedForecast;
import org.moultwright.language.Degrees;

/** Temperatures tried on, in tenths of a degree and in words. */
final class Temperatures {
    private Temperatures() {}

    /** Tenths of a degree as the keeper reads degrees. */
    static long tenths(double celsius) {
        return Math.round(10 * Degrees.unit().shown(celsius));
    }

    /** The temperature that is read as this, in °C. */
    static double nearestTenthCelsius(double celsius) {
        return Degrees.celsius(tenths(celsius) / 10.0);
    }

    /** How far apart two temperatures are that are read a tenth of a degree apart, in °C. */
    static double tenthCelsius() {
        return 0.1 / Degrees.unit().shownApart(1);
    }

    /** "27.0 °C". */
    static String words(double celsius) {
        return Degrees.words(celsius, 1);
    }

    /** One set-point from the instant of the question on. */
    static BroodForecast under(PreparedForecast prepared, double celsius) {
        return prepared.under(ClimatePlan.from(prepared.asOf(), celsius));
    }
}
