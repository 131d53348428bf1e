package org.moultwright.compute.alarm;

/**
 * A two-sided cumulative sum: how far values have gone beyond the usual, added up (Page 1954).
 *
 * @param high what went above, never below 0
 * @param low what went below, never below 0
 */
public record Cusum(double high, double low) {
    static final Cusum ZERO = new Cusum(0, 0);

    /**
     * The sums after one more value.
     *
     * @param deviation the value less its target
     * @param slack what is let pass each time, half the shift to be found
     */
    Cusum after(double deviation, double slack) {
        return new Cusum(Math.max(0, high + deviation - slack), Math.max(0, low - deviation - slack));
    }

    double farther() {
        return Math.max(high, low);
    }
}
