package org.moultwright.compute.climate;

import java.util.concurrent.TimeUnit;
import org.moultwright.compute.rate.RampIntegral;
import org.moultwright.compute.rate.RateCurve;
import org.moultwright.compute.rate.SineMean;

/**
 * A stretch of time in which the temperature runs in a straight line, or swings about one as a sine whose phase
 * nobody knows; instants in epoch milliseconds.
 *
 * @param swingCelsius how far it swings to either side, 0 on a straight line
 */
record Ramp(long fromMillis, long toMillis, double startCelsius, double endCelsius, double swingCelsius) {
    private static final double MILLIS_PER_DAY = TimeUnit.DAYS.toMillis(1);

    Ramp(long fromMillis, long toMillis, double startCelsius, double endCelsius) {
        this(fromMillis, toMillis, startCelsius, endCelsius, 0);
    }

    static Ramp swinging(long fromMillis, long toMillis, double lowestCelsius, double highestCelsius) {
        double middle = (lowestCelsius + highestCelsius) / 2;
        return new Ramp(fromMillis, toMillis, middle, middle, (highestCelsius - lowestCelsius) / 2);
    }

    static Ramp level(long fromMillis, long toMillis, double celsius) {
        return new Ramp(fromMillis, toMillis, celsius, celsius);
    }

    double celsiusAt(long millis) {
        double share = (double) (millis - fromMillis) / (toMillis - fromMillis);
        return startCelsius + share * (endCelsius - startCelsius);
    }

    /** The part of this ramp between two instants that lie within it. */
    Ramp between(long from, long to) {
        return from == fromMillis && to == toMillis
                ? this
                : new Ramp(from, to, celsiusAt(from), celsiusAt(to), swingCelsius);
    }

    double meanCelsius() {
        return (startCelsius + endCelsius) / 2;
    }

    double days() {
        return (toMillis - fromMillis) / MILLIS_PER_DAY;
    }

    /**
     * Development gained along the ramp, in the rate's unit times days. As the phase of a swing is not known, each
     * part of it gains the mean over a whole one.
     */
    double development(RateCurve rate) {
        return swingCelsius == 0 ? RampIntegral.of(rate, startCelsius, endCelsius, days()) : ofSwing(rate, 0);
    }

    /** How much more it would gain if the temperature were a kelvin higher. */
    double developmentPerKelvin(RateCurve rate) {
        return swingCelsius == 0
                ? Math.abs(rate.at(meanCelsius() + 0.5) - rate.at(meanCelsius() - 0.5)) * days()
                : Math.abs(ofSwing(rate, 0.5) - ofSwing(rate, -0.5));
    }

    private double ofSwing(RateCurve rate, double warmerByKelvin) {
        double middle = meanCelsius() + warmerByKelvin;
        return SineMean.of(rate, middle - swingCelsius, middle + swingCelsius) * days();
    }
}
