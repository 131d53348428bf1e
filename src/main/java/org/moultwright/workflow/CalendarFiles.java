package org.moultwright.workflow;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/** Writes calendars other programs read. Faults come as a {@link DocumentException}. */
@FunctionalInterface
public interface CalendarFiles {
    /**
     * Writes the entries as one file, whole or not at all.
     *
     * <p>A calendar that has an earlier one of the same key changes it for this one.
     *
     * @param madeAt when they were told
     */
    void save(List<CalendarEntry> entries, Instant madeAt, Path file);
}
