package org.moultwright.device.profile;

import java.util.Arrays;
import org.moultwright.language.Texts;

/** Why what a line says is no measurement. */
public enum FaultCause {
    /** The instrument says so itself. */
    INSTRUMENT("instrument"),
    /** The sensor is not there. */
    DISCONNECTED("disconnected"),
    /** It is what the sensor holds before it first measures. */
    POWER_ON("power-on"),
    /** No such probe measures this. */
    OUT_OF_RANGE("out-of-range"),
    /** The record's check value does not fit: the wire changed it. */
    CHECKSUM("checksum"),
    /** All zeros or all ones: nobody answered. */
    EMPTY("empty"),
    /** The instrument started anew and says what it is. */
    RESTART("restart");

    private final String key;

    FaultCause(String key) {
        this.key = key;
    }

    /** The word for it in a profile. */
    public String key() {
        return key;
    }

    /** The cause a profile names. */
    static FaultCause named(String key) {
        return Arrays.stream(values())
                .filter(cause -> cause.key.equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(Texts.say(
                        "'{0}' is no cause of a fault; they are {1}",
                        key, Arrays.stream(values()).map(FaultCause::key).toList())));
    }
}
