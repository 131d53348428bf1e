package org.moultwright.workflow;

import org.moultwright.language.Texts;

/** What a column of a file of readings means. */
public enum ColumnMeaning {
    NOTHING(Texts.say("not used")),
    DATE_AND_TIME(Texts.say("date and time")),
    DATE(Texts.say("date")),
    TIME(Texts.say("time of day")),
    EPOCH_SECONDS(Texts.say("s since 1970")),
    EPOCH_MILLIS(Texts.say("ms since 1970")),
    CELSIUS(Texts.say("temperature, °C")),
    FAHRENHEIT(Texts.say("temperature, °F")),
    HUMIDITY(Texts.say("humidity, %"));

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
