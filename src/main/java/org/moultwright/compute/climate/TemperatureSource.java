package org.moultwright.compute.climate;

/** Where the temperature of a span comes from. Spans of one source share its error. */
public sealed interface TemperatureSource {

    /** Whether a probe measured it. */
    default boolean isMeasured() {
        return this instanceof Probe;
    }

    /** Whether nothing at all told of it, neither a probe nor a lowest and a highest. */
    default boolean isGap() {
        return !isMeasured() && !(this instanceof BetweenExtremes);
    }

    /**
     * Measured, short bridges between readings included.
     *
     * @param probe the probe's code
     * @param container the container it stood in
     * @param isPlaceAssumed whether it is only assumed that the animals were there
     */
    record Probe(String probe, String container, boolean isPlaceAssumed) implements TemperatureSource {}

    /**
     * Known only by the lowest and highest a thermometer remembered.
     *
     * @param container the container it hung in
     * @param isPlaceAssumed whether it is only assumed that the animals were there
     */
    record BetweenExtremes(String container, boolean isPlaceAssumed) implements TemperatureSource {}

    /** A gap, filled with the nominal temperature of a container and its measured habit beside it. */
    record Habit(String container) implements TemperatureSource {}

    /** The set-point of a container that nothing has ever been measured against. */
    record SetPointAlone(String container) implements TemperatureSource {}

    /** Nothing known: the brood's reference temperature. */
    record Reference() implements TemperatureSource {}
}
