package org.moultwright.workflow;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.moultwright.domain.BroodRecord;

/**
 * From when forecasts are asked: the first full minute of this hour at which all was known that is known now. So within
 * an hour only what is written or measured changes a forecast, not the clock.
 */
final class SteadyHour {
    private SteadyHour() {}

    /** Never after {@code now}; {@code now} itself where something became known within its own minute. */
    static Instant of(BroodRecord record, Instant now) {
        Instant hour = now.truncatedTo(ChronoUnit.HOURS);
        long tooEarly = -1;
        long lateEnough = ChronoUnit.MINUTES.between(hour, now);
        if (!isWholeAt(hour.plus(lateEnough, ChronoUnit.MINUTES), record)) {
            return now;
        }
        while (lateEnough - tooEarly > 1) {
            long middle = (tooEarly + lateEnough) / 2;
            if (isWholeAt(hour.plus(middle, ChronoUnit.MINUTES), record)) {
                lateEnough = middle;
            } else {
                tooEarly = middle;
            }
        }
        return hour.plus(lateEnough, ChronoUnit.MINUTES);
    }

    private static boolean isWholeAt(Instant instant, BroodRecord record) {
        return record.until(instant).equals(record);
    }
}
