package org.moultwright.domain;

import java.util.Optional;

/** Something that happens to an alarm. */
public enum AlarmTurn implements Keyed {
    RAISED("raised"),
    /** What it warned of is over. */
    CLEARED("cleared"),
    /** The keeper has seen it. */
    ACKNOWLEDGED("acknowledged"),
    /** The keeper wants no sound for a while. */
    SNOOZED("snoozed"),
    SNOOZE_ENDED("snooze ended"),
    /** It still stands after a snooze and sounds again. */
    ANNOUNCED_AGAIN("announced again"),
    /** Nobody has seen it for too long. */
    ESCALATED("escalated"),
    /** It is no longer watched for. */
    OUT_OF_SERVICE("out of service");

    private final String key;

    AlarmTurn(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }

    public static Optional<AlarmTurn> fromKey(String key) {
        return Keyed.find(values(), key);
    }
}
