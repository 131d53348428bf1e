package org.moultwright.compute.climate;

import org.moultwright.domain.ProbeStay;

/** A stretch of the animals' time, measured or not; instants in epoch milliseconds. */
sealed interface Stretch {
    long fromMillis();

    long toMillis();

    Place place();

    /** A probe measured here. */
    record Measured(Ramp ramp, ProbeStay by, Place place) implements Stretch {
        @Override
        public long fromMillis() {
            return ramp.fromMillis();
        }

        @Override
        public long toMillis() {
            return ramp.toMillis();
        }
    }

    /** Nothing measured here. */
    record Hole(long fromMillis, long toMillis, Place place) implements Stretch {}
}
