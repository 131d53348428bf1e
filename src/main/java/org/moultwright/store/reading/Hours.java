package org.moultwright.store.reading;

import java.time.Duration;

/** Hours counted from 1970, UTC. */
final class Hours {
    private static final long MILLIS = Duration.ofHours(1).toMillis();

    private Hours() {}

    static long of(long epochMillis) {
        return Math.floorDiv(epochMillis, MILLIS);
    }

    static long startMillis(long hourNo) {
        return hourNo * MILLIS;
    }
}
