package org.moultwright.ui.chart;

import java.time.Duration;
import java.time.Instant;
import org.moultwright.domain.Require;

/**
 * The stretch of time a trace shows, from a minute to many years.
 *
 * @param from its first instant
 * @param to its last, after {@code from}
 */
public record TraceWindow(Instant from, Instant to) {
    private static final Duration SHORTEST = Duration.ofMinutes(1);
    private static final Duration LONGEST = Duration.ofDays(30 * 365);

    public TraceWindow {
        Require.that(to.isAfter(from), "to " + to + " is not after from " + from);
    }

    public Duration length() {
        return Duration.between(from, to);
    }

    /** The same instant at the same place, with so many times as much time about it; within a minute and 30 years. */
    public TraceWindow zoomed(double factor, Instant around) {
        long millis = Math.round(length().toMillis() * factor);
        long wanted = Math.max(SHORTEST.toMillis(), Math.min(LONGEST.toMillis(), millis));
        double share = (double) Duration.between(from, around).toMillis() / length().toMillis();
        Instant start = around.minusMillis(Math.round(share * wanted));
        return new TraceWindow(start, start.plusMillis(wanted));
    }

    /** As much time, a share of it later; earlier if negative. */
    public TraceWindow moved(double share) {
        Duration by = Duration.ofMillis(Math.round(length().toMillis() * share));
        return new TraceWindow(from.plus(by), to.plus(by));
    }

    /** As much time, ending no later than an instant. */
    public TraceWindow endingBy(Instant last) {
        return to.isAfter(last) ? new TraceWindow(last.minus(length()), last) : this;
    }

    /** Whether all of another window lies within this one. */
    public boolean holds(TraceWindow other) {
        return !other.from.isBefore(from) && !other.to.isAfter(to);
    }
}
