package org.moultwright.device.link;

import java.time.Duration;
import java.time.Instant;

/**
 * Knows whether a probe has been quiet for too long: three times its own habit, and at least so long. Each time
 * the port is opened again for silence, the patience doubles, up to sixteenfold, so that a rare speaker is not
 * restarted for ever.
 */
final class Silence {
    private static final int HABITS = 3;
    private static final int MOST_DOUBLINGS = 4;

    private final LinkClock clock;
    private final long leastNanos;
    private long sinceNanos;
    private Instant since;
    private long habitNanos;
    private int doublings;

    Silence(LinkClock clock, Duration least) {
        this.clock = clock;
        this.leastNanos = least.toNanos();
        this.sinceNanos = clock.nanos();
        this.since = clock.now();
    }

    /** Waits anew: the port was just opened. */
    void portOpened() {
        sinceNanos = clock.nanos();
        since = clock.now();
    }

    /** Waits anew and more patiently: the port was opened again because nothing came. */
    void portOpenedForSilence() {
        sinceNanos = clock.nanos();
        doublings = Math.min(doublings + 1, MOST_DOUBLINGS);
    }

    void heard() {
        // Halved, not forgotten: some probes send two lines at once and then rest.
        habitNanos = Math.max(clock.nanos() - sinceNanos, habitNanos / 2);
        doublings = 0;
        portOpened();
    }

    boolean isTooLong() {
        long patienceNanos = Math.max(leastNanos, HABITS * habitNanos) << doublings;
        return clock.nanos() - sinceNanos > patienceNanos;
    }

    /** When something was last heard, or the port opened. */
    Instant since() {
        return since;
    }
}
