package org.moultwright.document;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.moultwright.workflow.CalendarEntry;
import org.moultwright.workflow.CalendarFiles;

/** Calendars as iCalendar files. Holds nothing; safe to share. */
public final class IcsCalendarFiles implements CalendarFiles {
    @Override
    public void save(List<CalendarEntry> entries, Instant madeAt, Path file) {
        DocumentFile.write(file, new IcsCalendar(entries, madeAt).bytes());
    }
}
