package org.moultwright.compute.climate;

/** One straight piece of the lived temperature, with its source and standard uncertainty in K. */
record LivedPiece(Ramp ramp, TemperatureSource source, double sdCelsius) {

    /** Another straight piece with the same source. */
    LivedPiece along(Ramp otherRamp) {
        return new LivedPiece(otherRamp, source, sdCelsius);
    }

    boolean hasSourceOf(LivedPiece other) {
        return source.equals(other.source) && sdCelsius == other.sdCelsius;
    }
}
