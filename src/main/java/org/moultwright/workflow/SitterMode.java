package org.moultwright.workflow;

import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;

/** Whether the desk is in a sitter's hands. Safe to share between threads. */
public final class SitterMode {
    private final SitterMark mark;
    private final InstantSource clock;
    private volatile Optional<Instant> since;

    public SitterMode(SitterMark mark, InstantSource clock) {
        this.mark = mark;
        this.clock = clock;
        this.since = mark.read();
    }

    /** Since when it is; empty while it is in the keeper's. */
    public Optional<Instant> since() {
        return since;
    }

    /** From when this returns on it is, however often the desk is opened. */
    public synchronized void handOver() {
        Instant now = clock.instant();
        mark.write(now);
        since = Optional.of(now);
    }

    public synchronized void takeBack() {
        mark.remove();
        since = Optional.empty();
    }
}
