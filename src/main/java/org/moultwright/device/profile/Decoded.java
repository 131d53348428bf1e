package org.moultwright.device.profile;

/** What a line says. */
public sealed interface Decoded {

    /**
     * A measurement the probe can have made.
     *
     * @param temperatureCelsius in °C, within the profile's limits
     * @param humidityPercent in % as told, NaN where the line tells none, infinite where it tells one that is
     *     no measurement
     */
    record Measured(double temperatureCelsius, double humidityPercent) implements Decoded {}

    /** The instrument says that it cannot measure, or tells what no measurement gives. */
    record Fault(FaultCause cause) implements Decoded {}

    /** A line that belongs to the form and says nothing, such as a heading. */
    record Ignored() implements Decoded {}

    /** The profile does not know such a line. */
    record Unreadable() implements Decoded {}
}
