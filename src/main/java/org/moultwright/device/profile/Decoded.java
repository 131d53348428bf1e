package org.moultwright.device.profile;

/** What a line says. */
public sealed interface Decoded {

    /** What it says, in the words of a profile's test lines: "25.7 74.2", "fault checksum". */
    default String words() {
        if (this instanceof Measured measured) {
            double percent = measured.humidityPercent();
            String humidity = Double.isNaN(percent) ? "" : Double.isInfinite(percent) ? " none" : " " + percent;
            return measured.temperatureCelsius() + humidity;
        }
        if (this instanceof Fault fault) {
            return "fault " + fault.cause().key();
        }
        return this instanceof Ignored ? "ignored" : "unreadable";
    }

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
