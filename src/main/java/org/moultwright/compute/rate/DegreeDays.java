package org.moultwright.compute.rate;

import org.moultwright.domain.Require;

/**
 * Degree-days of a day of which only the lowest and the highest temperature are known, by a single sine
 * with horizontal cut-off (Baskerville &amp; Emin 1969; Zalom et al. 1983).
 */
public final class DegreeDays {
    private DegreeDays() {}

    /** Degree-days above a lower threshold, temperatures above the upper one counting as the upper one. */
    public static double singleSine(
            double minimumCelsius, double maximumCelsius, double lowerCelsius, double upperCelsius) {
        Require.that(
                upperCelsius >= lowerCelsius,
                "upperCelsius " + upperCelsius + " must be at least lowerCelsius " + lowerCelsius);
        return above(lowerCelsius, minimumCelsius, maximumCelsius)
                - above(upperCelsius, minimumCelsius, maximumCelsius);
    }

    /** Degree-days above a threshold, without an upper one. */
    public static double singleSine(double minimumCelsius, double maximumCelsius, double lowerCelsius) {
        return above(lowerCelsius, minimumCelsius, maximumCelsius);
    }

    private static double above(double threshold, double minimum, double maximum) {
        Require.that(maximum >= minimum, "maximumCelsius " + maximum + " must be at least minimumCelsius " + minimum);
        double mean = (maximum + minimum) / 2;
        if (minimum >= threshold) {
            return mean - threshold;
        }
        if (maximum <= threshold) {
            return 0;
        }
        double amplitude = (maximum - minimum) / 2;
        double crossing = Math.asin((threshold - mean) / amplitude);
        return ((mean - threshold) * (Math.PI / 2 - crossing) + amplitude * Math.cos(crossing)) / Math.PI;
    }
}
