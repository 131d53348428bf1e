package org.moultwright.compute.climate;

/** A stretch of the animals' time, measured or not; instants in epoch milliseconds. */
sealed interface Stretch {
    long fromMillis();

    long toMillis();

    Place place();

    /** A probe measured here, or a thermometer remembered its lowest and highest. */
    record Measured(LivedPiece piece, Place place) implements Stretch {
        @Override
        public long fromMillis() {
            return piece.ramp().fromMillis();
        }

        @Override
        public long toMillis() {
            return piece.ramp().toMillis();
        }
    }

    /** Nothing measured here. */
    record Hole(long fromMillis, long toMillis, Place place) implements Stretch {}
}
