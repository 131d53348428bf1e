package org.moultwright.device.profile;

/**
 * A line a profile carries with what it must make of it.
 *
 * @param line the line
 * @param expected what it says
 */
record ProfileTest(String line, Decoded expected) {
    private static final double TOLERANCE = 1e-3;

    boolean holds(Decoded actual) {
        if (expected instanceof Decoded.Measured wanted && actual instanceof Decoded.Measured found) {
            return isSame(wanted.temperatureCelsius(), found.temperatureCelsius())
                    && isSame(wanted.humidityPercent(), found.humidityPercent());
        }
        return expected.equals(actual);
    }

    private static boolean isSame(double wanted, double found) {
        return Math.abs(wanted - found) <= TOLERANCE || (Double.isNaN(wanted) && Double.isNaN(found));
    }
}
