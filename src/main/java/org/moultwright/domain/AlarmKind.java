package org.moultwright.domain;

import java.util.Optional;

/** What an alarm warns of. */
public enum AlarmKind implements Keyed {
    /** Warmer than broods should have it. */
    HIGH("high"),
    /** Warm enough to kill. */
    VERY_HIGH("very high"),
    /** Cooler than broods should have it. */
    LOW("low"),
    /** Cold enough to harm. */
    VERY_LOW("very low"),
    /** Warming or cooling faster than a healthy incubator does. */
    RATE("rate"),
    /** No good reading comes. */
    SILENT("silent"),
    /** Readings come but never change. */
    STUCK("stuck"),
    /** The temperature leaves what this incubator usually makes of its set-point. */
    DRIFT("drift"),
    /** Water settles on the wall. */
    CONDENSATION("condensation");

    private final String key;

    AlarmKind(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }

    /** Whether values below its limit are the bad ones. */
    public boolean isBelow() {
        return this == LOW || this == VERY_LOW;
    }

    public static Optional<AlarmKind> fromKey(String key) {
        return Keyed.find(values(), key);
    }
}
