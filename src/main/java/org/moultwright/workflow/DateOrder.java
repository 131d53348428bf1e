package org.moultwright.workflow;

/** In which order a file writes the parts of a date. A year of four digits in front is always taken for one. */
public enum DateOrder {
    DAY_FIRST("day, month, year"),
    MONTH_FIRST("month, day, year"),
    YEAR_FIRST("year, month, day");

    private final String words;

    DateOrder(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
