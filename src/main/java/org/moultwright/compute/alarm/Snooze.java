package org.moultwright.compute.alarm;

import java.time.Instant;

/**
 * A quiet spell with an end. It ends by whichever clock comes first, so that a clock set back cannot prolong
 * it and a machine that slept cannot either.
 *
 * @param leftMillis how long it lasts still, by the steady clock
 * @param end when it ends, by the wall clock
 */
public record Snooze(long leftMillis, Instant end) {

    Snooze after(long elapsedMillis) {
        return new Snooze(leftMillis - elapsedMillis, end);
    }

    boolean isOver(Instant at) {
        return leftMillis <= 0 || !at.isBefore(end);
    }
}
