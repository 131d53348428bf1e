package org.moultwright.compute.survival;

import org.moultwright.domain.Require;

/**
 * How long one animal was watched.
 *
 * @param time how long, at least 0, in any unit
 * @param isEvent whether the watch ended with the event; otherwise the animal was taken out before it
 */
public record Lifetime(double time, boolean isEvent) {
    public Lifetime {
        Require.within("time", time, 0, Double.MAX_VALUE);
    }
}
