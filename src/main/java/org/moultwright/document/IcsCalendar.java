package org.moultwright.document;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.moultwright.workflow.CalendarEntry;

/**
 * A calendar of RFC 5545. The same entries told at the same time always give the same bytes.
 *
 * @param entries whole days each
 * @param madeAt when they were told
 */
record IcsCalendar(List<CalendarEntry> entries, Instant madeAt) {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);
    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final int SECONDS_PER_MINUTE = 60;

    /** RFC 5545, 3.1.4: the default charset for an iCalendar stream is UTF-8. */
    byte[] bytes() {
        StringBuilder calendar = new StringBuilder();
        calendar.append(IcsText.line("BEGIN", "VCALENDAR"))
                // RFC 5545, 3.7.4 and 3.7.3: both are required.
                .append(IcsText.line("VERSION", "2.0"))
                .append(IcsText.text("PRODID", "-//moultwright.org//Moultwright//EN"))
                .append(IcsText.line("CALSCALE", "GREGORIAN"));
        entries.forEach(entry -> calendar.append(event(entry)));
        return calendar.append(IcsText.line("END", "VCALENDAR")).toString().getBytes(StandardCharsets.UTF_8);
    }

    private String event(CalendarEntry entry) {
        String told = UTC.format(madeAt);
        return IcsText.line("BEGIN", "VEVENT")
                + IcsText.text("UID", uid(entry.key()))
                // RFC 5545, 3.8.7.2: in a calendar without METHOD, when the information was last revised.
                + IcsText.line("DTSTAMP", told)
                + IcsText.line("LAST-MODIFIED", told)
                + IcsText.line("SEQUENCE", Long.toString(sequence()))
                // RFC 5545, 3.6.1: DTEND is the non-inclusive end of the event.
                + IcsText.line("DTSTART;VALUE=DATE", DATE.format(entry.first()))
                + IcsText.line("DTEND;VALUE=DATE", DATE.format(dayAfter(entry.last())))
                + IcsText.text("SUMMARY", entry.title())
                + IcsText.text("DESCRIPTION", entry.notes())
                // RFC 5545, 3.8.2.7: a window is no appointment, the keeper stays free.
                + IcsText.line("TRANSP", "TRANSPARENT")
                + IcsText.line("END", "VEVENT");
    }

    /** RFC 7986, 5.3: a UUID and nothing of the machine. By its key it is the same in every export. */
    static String uid(String key) {
        return UUID.nameUUIDFromBytes(("moultwright/" + key).getBytes(StandardCharsets.UTF_8))
                .toString();
    }

    /**
     * RFC 5545, 3.8.7.4: a revision has a higher number than the one before. Nothing is kept of earlier exports,
     * so it is the minutes since 1970, which an INTEGER of RFC 5545, 3.3.8 holds until the year 6053.
     */
    private long sequence() {
        return Math.max(0, madeAt.getEpochSecond() / SECONDS_PER_MINUTE);
    }

    private static LocalDate dayAfter(LocalDate last) {
        return last.plusDays(1);
    }
}
