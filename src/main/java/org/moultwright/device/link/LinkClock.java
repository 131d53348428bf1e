package org.moultwright.device.link;

import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.function.LongSupplier;

/**
 * The two clocks of a machine.
 *
 * @param wall what the time is; it can be set
 * @param steadyNanos goes on evenly from some moment, but may rest while the machine sleeps
 */
public record LinkClock(InstantSource wall, LongSupplier steadyNanos) {
    public static final LinkClock SYSTEM = new LinkClock(InstantSource.system(), System::nanoTime);

    /** The wall clock, to the millisecond. */
    Instant now() {
        return wall.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    long nanos() {
        return steadyNanos.getAsLong();
    }
}
