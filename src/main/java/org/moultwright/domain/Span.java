package org.moultwright.domain;

import java.time.Instant;
import java.util.Optional;

/**
 * A span of time, its start included and its end not.
 *
 * @param from when it began
 * @param to when it ended, empty while it lasts
 */
public record Span(Instant from, Optional<Instant> to) {
    public Span {
        Require.that(to.isEmpty() || !to.get().isBefore(from), "to " + to + " is before from " + from);
    }

    public boolean contains(Instant instant) {
        return !instant.isBefore(from) && (to.isEmpty() || instant.isBefore(to.get()));
    }

    /** This span as it was known at an instant within it or after it: an end yet to come is left open. */
    public Span until(Instant instant) {
        return to.isPresent() && to.get().isAfter(instant) ? new Span(from, Optional.empty()) : this;
    }
}
