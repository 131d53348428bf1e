package org.moultwright.compute.plan;

import java.time.Instant;
import java.util.List;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.domain.Require;

/**
 * When the earliest of several things happens.
 *
 * <p>The chance of it is taken as if none told of another. Trays of a brood are early or late together, so
 * that it is at most this, and a day that is safe by it is safe.
 *
 * @param each at least one
 */
public record Earliest(List<InstantInterval> each) {
    public Earliest {
        Require.that(!each.isEmpty(), "each holds 0 but needs at least 1");
        each = List.copyOf(each);
    }

    /** The probability, within [0, 1], that any has happened by an instant. */
    public double chanceBy(Instant instant) {
        return 1 - each.stream().mapToDouble(one -> 1 - one.chanceBy(instant)).reduce(1, (a, b) -> a * b);
    }

    /** The latest instant, to the millisecond, by which none has happened with a probability. */
    public Instant noneBefore(double safety) {
        Require.within("safety", safety, 0, 1);
        long safe = end(0) - 1;
        long unsafe = end(100) + 1;
        while (unsafe - safe > 1) {
            long middle = safe + (unsafe - safe) / 2;
            if (chanceBy(Instant.ofEpochMilli(middle)) <= 1 - safety) {
                safe = middle;
            } else {
                unsafe = middle;
            }
        }
        return Instant.ofEpochMilli(safe);
    }

    private long end(int percent) {
        return each.stream()
                .mapToLong(one -> one.at(percent).toEpochMilli())
                .min()
                .orElseThrow();
    }
}
