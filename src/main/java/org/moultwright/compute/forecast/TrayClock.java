package org.moultwright.compute.forecast;

import java.time.Duration;
import java.time.Instant;
import org.moultwright.compute.climate.WarmDays;

/**
 * One tray's age in warm-days at any instant and back: up to now as lived, from now on by a draw's path.
 *
 * @param lived what was lived
 * @param past the same by the hour
 * @param ageAtOrigin age where that begins: 0 at laying, else what the animals looked then
 * @param now the instant of the question
 * @param future what may come
 */
record TrayClock(WarmDays lived, PastClock past, double ageAtOrigin, Instant now, FutureClimate future) {
    private static final double MILLIS_PER_DAY = Duration.ofDays(1).toMillis();

    /** Dates beyond this are as good as never. */
    private static final double MOST_DAYS = 3650;

    /** Age now. */
    double age() {
        return ageAtOrigin + lived.total();
    }

    /** Age at an instant not after now. */
    double ageAt(Instant instant) {
        return instant.isBefore(lived.temperature().from()) ? 0 : ageAtOrigin + lived.at(instant);
    }

    /** Age at an instant on the path of a draw, never less than now. */
    double ageAt(Instant instant, int draw) {
        double days = Duration.between(now, instant).toMillis() / MILLIS_PER_DAY;
        return age() + (days > 0 ? future.warmDaysAfter(days, draw) : 0);
    }

    /** The instant an age was or will be reached on the path of a draw, in milliseconds of the epoch. */
    double millisAt(double age, int draw) {
        double ahead = age - age();
        if (ahead > 0) {
            return now.toEpochMilli() + MILLIS_PER_DAY * Math.min(MOST_DAYS, future.daysUntil(ahead, draw));
        }
        return past.millisAt(age - ageAtOrigin);
    }
}
