package org.moultwright.compute.rate;

/**
 * The development gained while the temperature moves in a straight line.
 *
 * <p>Five-point Gauss–Legendre on equal steps of at most half an hour, which is exact for rates that are
 * polynomials of degree nine in temperature. A step that crosses the threshold of a straight-line curve is
 * off by less than 0.7 % of its length times the rise its slope would give across the whole of it.
 */
public final class RampIntegral {
    private static final double STEPS_PER_DAY = 48;
    private static final double[] NODES = {
        0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640
    };
    private static final double[] WEIGHTS = {
        0.5688888888888889, 0.4786286704993665, 0.4786286704993665, 0.2369268850561891, 0.2369268850561891
    };

    private RampIntegral() {}

    /** ∫ r(T(t)) dt over so many days, T running from the start to the end temperature. */
    public static double of(RateCurve rate, double startCelsius, double endCelsius, double days) {
        if (startCelsius == endCelsius) {
            return rate.at(startCelsius) * days;
        }
        int steps = Math.max(1, (int) Math.ceil(days * STEPS_PER_DAY));
        double halfStepCelsius = (endCelsius - startCelsius) / steps / 2;
        double sum = 0;
        for (int step = 0; step < steps; step++) {
            double middleCelsius = startCelsius + (2 * step + 1) * halfStepCelsius;
            for (int i = 0; i < NODES.length; i++) {
                sum += WEIGHTS[i] * rate.at(middleCelsius + NODES[i] * halfStepCelsius);
            }
        }
        return sum / 2 / steps * days;
    }
}
