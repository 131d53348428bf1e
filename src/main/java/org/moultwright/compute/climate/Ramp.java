package org.moultwright.compute.climate;

import java.util.concurrent.TimeUnit;
import org.moultwright.compute.rate.RampIntegral;
import org.moultwright.compute.rate.RateCurve;

/** A stretch of time in which the temperature runs in a straight line; instants in epoch milliseconds. */
record Ramp(long fromMillis, long toMillis, double startCelsius, double endCelsius) {
    private static final double MILLIS_PER_DAY = TimeUnit.DAYS.toMillis(1);

    static Ramp level(long fromMillis, long toMillis, double celsius) {
        return new Ramp(fromMillis, toMillis, celsius, celsius);
    }

    double celsiusAt(long millis) {
        double share = (double) (millis - fromMillis) / (toMillis - fromMillis);
        return startCelsius + share * (endCelsius - startCelsius);
    }

    /** The part of this ramp between two instants that lie within it. */
    Ramp between(long from, long to) {
        return from == fromMillis && to == toMillis ? this : new Ramp(from, to, celsiusAt(from), celsiusAt(to));
    }

    double meanCelsius() {
        return (startCelsius + endCelsius) / 2;
    }

    double days() {
        return (toMillis - fromMillis) / MILLIS_PER_DAY;
    }

    /** Development gained along the ramp, in the rate's unit times days. */
    double development(RateCurve rate) {
        return RampIntegral.of(rate, startCelsius, endCelsius, days());
    }
}
