package org.moultwright.ui.climate;

import org.moultwright.domain.AlarmEntry;
import org.moultwright.text.AlarmWords;
import org.moultwright.text.DayWords;

/**
 * One line of the alarm journal as it is read.
 *
 * @param when such as "3 May 21:14"
 * @param what such as "box 1 too warm, 29.3 °C"
 */
record JournalRow(String when, String what) {
    static JournalRow of(AlarmEntry entry, DayWords days) {
        return new JournalRow(days.shortDay(entry.at()) + " " + days.clock(entry.at()), AlarmWords.line(entry));
    }
}
