package org.moultwright.compute.forecast;

import java.time.Instant;
import org.moultwright.compute.climate.WarmDays;

/**
 * The instant at which any number of warm-days was lived, looked up: straight between the hours, so that a
 * thousand draws cost as many look-ups and no integral. Immutable.
 */
final class PastClock {
    private static final long STEP_MILLIS = 3_600_000;

    private final long fromMillis;
    private final long untilMillis;
    private final double[] livedByHour;

    PastClock(WarmDays lived) {
        this.fromMillis = lived.temperature().from().toEpochMilli();
        this.untilMillis = lived.temperature().until().toEpochMilli();
        this.livedByHour = new double[(int) ((untilMillis - fromMillis) / STEP_MILLIS) + 2];
        for (int hour = 0; hour < livedByHour.length; hour++) {
            livedByHour[hour] = lived.at(Instant.ofEpochMilli(fromMillis + hour * STEP_MILLIS));
        }
    }

    /** When so many warm-days were lived, in milliseconds of the epoch: not before the first, nor after the last. */
    double millisAt(double warmDays) {
        int low = 0;
        int high = livedByHour.length - 1;
        if (warmDays <= livedByHour[low]) {
            return fromMillis;
        }
        if (warmDays >= livedByHour[high]) {
            return untilMillis;
        }
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (livedByHour[middle] < warmDays) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double share = (warmDays - livedByHour[low]) / (livedByHour[high] - livedByHour[low]);
        return Math.min((double) untilMillis, fromMillis + (low + share) * STEP_MILLIS);
    }
}
