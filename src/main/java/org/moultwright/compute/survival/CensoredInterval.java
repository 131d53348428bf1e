package org.moultwright.compute.survival;

import org.moultwright.domain.Require;

/**
 * An event known only to lie after one time and not after another: (left, right].
 *
 * @param left the last time at which it had not happened, 0 if never looked before
 * @param right the first time at which it had, infinite if it has not; equal to {@code left} where the
 *     event was seen exactly then
 */
public record CensoredInterval(double left, double right) {
    public CensoredInterval {
        Require.within("left", left, 0, Double.MAX_VALUE);
        Require.that(right >= left, "right " + right + " must be at least left " + left);
    }

    /** Whether the event may have fallen within another interval, all of it. */
    boolean covers(CensoredInterval other) {
        boolean isExact = left == right;
        return isExact ? other.equals(this) : left <= other.left && other.right <= right && !other.isPoint(left);
    }

    private boolean isPoint(double time) {
        return left == time && right == time;
    }
}
