package org.moultwright.workflow;

import java.time.LocalDate;
import org.moultwright.domain.Require;

/**
 * Whole days in a keeper's calendar.
 *
 * @param key what it is about, the same whenever it is told anew
 * @param first its first day
 * @param last its last day
 * @param title in a few words
 * @param notes in sentences, a line each
 */
public record CalendarEntry(String key, LocalDate first, LocalDate last, String title, String notes) {
    public CalendarEntry {
        Require.text("key", key);
        Require.text("title", title);
        Require.that(!last.isBefore(first), "last is " + last + " but must not be before " + first);
    }
}
