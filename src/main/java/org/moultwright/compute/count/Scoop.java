package org.moultwright.compute.count;

import org.moultwright.domain.Require;

/**
 * A counted and weighed part of a clutch.
 *
 * @param count animals in it
 * @param weight its weight, above 0, in the unit of the whole
 */
public record Scoop(int count, double weight) {
    public Scoop {
        Require.atLeast("count", count, 0);
        Require.that(weight > 0, "weight is " + weight + " but must be above 0");
    }
}
