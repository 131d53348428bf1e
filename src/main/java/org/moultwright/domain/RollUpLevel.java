package org.moultwright.domain;

import java.time.Duration;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

/** How much time one roll-up holds. Each is a whole number of the finer ones, counted from 1970, UTC. */
public enum RollUpLevel {
    MINUTE(1),
    QUARTER_HOUR(15),
    HOUR(60),
    DAY(24 * 60);

    private final int minutes;
    private final long millis;

    RollUpLevel(int minutes) {
        this.minutes = minutes;
        this.millis = Duration.ofMinutes(minutes).toMillis();
    }

    /** The coarsest that still gives so many roll-ups over a stretch of time; empty if none does. */
    public static Optional<RollUpLevel> coarsest(Duration stretch, double atLeast) {
        return Arrays.stream(values())
                .filter(level -> stretch.toMillis() >= atLeast * level.millis)
                .max(Comparator.naturalOrder());
    }

    public int minutes() {
        return minutes;
    }

    public long millis() {
        return millis;
    }

    /** The beginning of the roll-up that a millisecond falls into. */
    public long startMillis(long epochMillis) {
        return Math.floorDiv(epochMillis, millis) * millis;
    }
}
