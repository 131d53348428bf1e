package org.moultwright.workflow;

import org.moultwright.language.Texts;

/** In which order a file writes the parts of a date. A year of four digits in front is always taken for one. */
public enum DateOrder {
    DAY_FIRST(Texts.say("day, month, year")),
    MONTH_FIRST(Texts.say("month, day, year")),
    YEAR_FIRST(Texts.say("year, month, day"));

    private final String words;

    DateOrder(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
