package org.moultwright.compute.climate;

import java.time.Duration;

/** The 15-minute grid of UTC on which a climate's habits are learned, numbered from the epoch. */
final class QuarterHour {
    static final long MILLIS = Duration.ofMinutes(15).toMillis();
    static final int PER_DAY = 96;

    private QuarterHour() {}

    static long containing(long millis) {
        return Math.floorDiv(millis, MILLIS);
    }

    static long startMillis(long quarter) {
        return quarter * MILLIS;
    }

    static long middleMillis(long quarter) {
        return startMillis(quarter) + MILLIS / 2;
    }

    /** Its number within the UTC day, 0 to 95. */
    static int ofDay(long quarter) {
        return Math.floorMod(quarter, PER_DAY);
    }
}
