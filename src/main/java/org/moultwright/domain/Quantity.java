package org.moultwright.domain;

import java.util.Optional;

/** What of the air a probe measures. */
public enum Quantity implements Keyed {
    /** In °C. */
    TEMPERATURE("temperature"),
    /** Relative humidity over water, in %. */
    HUMIDITY("humidity");

    private final String key;

    Quantity(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }

    public static Optional<Quantity> fromKey(String key) {
        return Keyed.find(values(), key);
    }
}
