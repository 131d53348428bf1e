package org.moultwright.domain;

import java.time.Duration;
import java.time.Instant;

/**
 * An instant known only to lie between two others, both included.
 *
 * @param earliest the first instant it may have been
 * @param latest the last instant it may have been, never before {@code earliest}
 */
public record InstantRange(Instant earliest, Instant latest) {
    public InstantRange {
        // Made for every event that is read, so the sentence is put together only where it is said.
        if (latest.isBefore(earliest)) {
            throw new IllegalArgumentException("latest " + latest + " is before earliest " + earliest);
        }
    }

    /** An instant of the last day it may have been: a range up to midnight does not reach into the day that begins. */
    public Instant last() {
        return latest.isAfter(earliest) ? latest.minusNanos(1) : latest;
    }

    /** The instant half way between both ends. */
    public Instant middle() {
        return earliest.plus(width().dividedBy(2));
    }

    public Duration width() {
        return Duration.between(earliest, latest);
    }
}
