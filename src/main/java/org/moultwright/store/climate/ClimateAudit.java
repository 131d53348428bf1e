package org.moultwright.store.climate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.moultwright.store.reading.BroughtReadings;
import org.moultwright.store.sql.Problem;

/** Reads all that is written of the room's instruments and climate and every line of the alarm journal, and says which table cannot be read. */
public final class ClimateAudit {
    private ClimateAudit() {}

    public static List<Problem> of(Handle handle) {
        List<Problem> problems = new ArrayList<>();
        read(handle, "calibration", new CalibrationTable()::all, problems);
        read(handle, "display_note", new DisplayTable()::all, problems);
        read(handle, "alarm_entry", H2AlarmJournal::all, problems);
        read(handle, "extremes", new ExtremesTable()::all, problems);
        read(handle, "probe_placing", new PlacingTable()::all, problems);
        read(handle, "brought_readings", BroughtReadings::requireReadable, problems);
        read(handle, "hand_reading", new HandReadingTable()::all, problems);
        return problems;
    }

    private static void read(Handle handle, String table, Consumer<Handle> reading, List<Problem> problems) {
        try {
            reading.accept(handle);
        } catch (IllegalArgumentException e) {
            problems.add(new Problem(table, "a row", String.valueOf(e.getMessage())));
        }
    }
}
