package org.moultwright.workflow;

import java.time.Instant;
import java.util.Optional;

/** A sitter's mark in memory, for tests of what is above it. */
public final class MemoryMark implements SitterMark {
    private Optional<Instant> since = Optional.empty();

    @Override
    public Optional<Instant> read() {
        return since;
    }

    @Override
    public void write(Instant now) {
        since = Optional.of(now);
    }

    @Override
    public void remove() {
        since = Optional.empty();
    }
}
