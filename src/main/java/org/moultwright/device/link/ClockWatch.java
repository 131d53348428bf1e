package org.moultwright.device.link;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Sees the wall clock leave the steady one: it was set, or the machine slept. */
final class ClockWatch {
    private static final Duration LEAST_STEP = Duration.ofSeconds(2);

    private final LinkClock clock;
    private Instant lastWall;
    private long lastNanos;

    ClockWatch(LinkClock clock) {
        this.clock = clock;
        this.lastWall = clock.now();
        this.lastNanos = clock.nanos();
    }

    /** How far the wall clock jumped since this was last asked, if it did. */
    Optional<Duration> step() {
        Instant wall = clock.now();
        long nanos = clock.nanos();
        Duration step = Duration.between(lastWall, wall).minusNanos(nanos - lastNanos);
        lastWall = wall;
        lastNanos = nanos;
        return step.abs().compareTo(LEAST_STEP) > 0 ? Optional.of(step) : Optional.empty();
    }
}
