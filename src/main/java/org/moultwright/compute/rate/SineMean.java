package org.moultwright.compute.rate;

/**
 * The mean rate while the temperature swings once, as a sine, from a lowest to a highest and back.
 *
 * <p>For the straight line with horizontal cut-offs its product with a day is the published single-sine
 * {@link DegreeDays}; this is the same for a curve of any form. The swing is even about its turning points, so that
 * equal steps in phase meet a smooth curve to rounding; a curve with a kink is met to 1e-5 of the kink's slope times
 * the range.
 */
public final class SineMean {
    private static final int STEPS = 360;
    private static final double[] SINES = new double[STEPS];

    static {
        for (int i = 0; i < STEPS; i++) {
            SINES[i] = Math.sin(Math.PI * ((i + 0.5) / STEPS - 0.5));
        }
    }

    private SineMean() {}

    /** 1/π ∫ r(M + W sin θ) dθ over θ from −π/2 to π/2, M being the middle and W half the range. */
    public static double of(RateCurve rate, double lowestCelsius, double highestCelsius) {
        double middle = (lowestCelsius + highestCelsius) / 2;
        double half = (highestCelsius - lowestCelsius) / 2;
        double sum = 0;
        for (double sine : SINES) {
            sum += rate.at(middle + half * sine);
        }
        return sum / STEPS;
    }
}
