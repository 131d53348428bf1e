package org.moultwright.domain;

import java.util.Arrays;
import java.util.Optional;

/** How far a reading may be trusted. Only good ones feed any statistic. */
public enum Quality {
    GOOD("good"),
    /** A legal value that something speaks against, such as a sudden jump. */
    SUSPECT("suspect"),
    /** The instrument said, or the value shows, that this is no measurement. */
    FAULT("fault");

    private final String key;

    Quality(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }

    public static Optional<Quality> fromKey(String key) {
        return Arrays.stream(values())
                .filter(quality -> quality.key.equals(key))
                .findFirst();
    }
}
