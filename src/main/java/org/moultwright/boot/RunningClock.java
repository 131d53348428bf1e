package org.moultwright.boot;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** A clock that read {@code start} when it was made and has run on since, at this machine's pace. */
final class RunningClock implements InstantSource {
    private final Duration ahead;
    private final Clock machine = Clock.systemUTC();

    RunningClock(Instant start) {
        this.ahead = Duration.between(machine.instant(), start);
    }

    @Override
    public Instant instant() {
        return machine.instant().plus(ahead);
    }
}
