package org.moultwright.device.profile;

/** What a line says. */
public sealed interface Decoded {

    /**
     * A measurement the probe can have made.
     *
     * @param temperatureCelsius in °C, within the profile's limits
     * @param humidityPercent in % as told, whatever it may be worth, or NaN where the line tells none
     */
    record Measured(double temperatureCelsius, double humidityPercent) implements Decoded {}

    /** The instrument says that it cannot measure, or tells a number that no measurement gives. */
    record Fault() implements Decoded {}

    /** The profile does not know such a line. */
    record Unreadable() implements Decoded {}
}
