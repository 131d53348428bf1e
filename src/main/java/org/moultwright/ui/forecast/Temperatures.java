package org.moultwright.ui.forecast;

import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.ClimatePlan;
import org.moultwright.compute.forecast.PreparedForecast;
import org.moultwright.language.Degrees;

/** Temperatures tried on, in tenths of a degree and in words. */
final class Temperatures {
    private Temperatures() {}

    static long tenths(double celsius) {
        return Math.round(10 * celsius);
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
