package org.moultwright.workflow;

/** What a column of a file of readings means. */
public enum ColumnMeaning {
    NOTHING("not used"),
    DATE_AND_TIME("date and time"),
    DATE("date"),
    TIME("time of day"),
    EPOCH_SECONDS("s since 1970"),
    EPOCH_MILLIS("ms since 1970"),
    CELSIUS("temperature, °C"),
    FAHRENHEIT("temperature, °F"),
    HUMIDITY("humidity, %");

    private final String words;

    ColumnMeaning(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public boolean isTemperature() {
        return this == CELSIUS || this == FAHRENHEIT;
    }

    /** Whether it tells an instant all by itself. */
    public boolean isWholeTime() {
        return this == DATE_AND_TIME || this == EPOCH_SECONDS || this == EPOCH_MILLIS;
    }
}
