package org.moultwright.store.reading;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;
import org.moultwright.workflow.ReadingLog.Logged;

/** Readings of each probe's latest hour, row by row as they come in. */
final class ReadingRowTable {
    private static final RowReader<Logged> LOGGED = row -> new Logged(
            new Reading(
                    Instant.ofEpochMilli(row.number("taken_at_millis")),
                    row.measure("temperature_celsius"),
                    row.measure("humidity_percent"),
                    row.keyed("quality", Quality::fromKey)),
            row.text("raw_line"));

    private ReadingRowTable() {}

    static void insert(Handle handle, int probeNo, List<Logged> readings) {
        Rows.insert(
                handle,
                "reading_row",
                readings.stream().map(logged -> cells(probeNo, logged)).toList());
    }

    /** The readings at or after one millisecond and before another, in order of time. */
    static List<Logged> between(Handle handle, int probeNo, long fromMillis, long toMillis) {
        return handle.createQuery("select * from reading_row where probe_no = :probe"
                        + " and taken_at_millis >= :from_millis and taken_at_millis < :to_millis"
                        + " order by probe_no, taken_at_millis")
                .bind("probe", probeNo)
                .bind("from_millis", fromMillis)
                .bind("to_millis", toMillis)
                .map(LOGGED.mapper())
                .list();
    }

    static Optional<Reading> latest(Handle handle, int probeNo) {
        return handle.createQuery("select * from reading_row where probe_no = :probe"
                        + " order by probe_no desc, taken_at_millis desc fetch first 1 row only")
                .bind("probe", probeNo)
                .map(LOGGED.mapper())
                .findFirst()
                .map(Logged::reading);
    }

    static Optional<Long> earliestMillis(Handle handle, int probeNo) {
        return handle.createQuery("select taken_at_millis from reading_row where probe_no = :probe"
                        + " order by probe_no, taken_at_millis fetch first 1 row only")
                .bind("probe", probeNo)
                .mapTo(Long.class)
                .findFirst();
    }

    static void delete(Handle handle, int probeNo, long fromMillis, long toMillis) {
        handle.createUpdate("delete from reading_row where probe_no = :probe"
                        + " and taken_at_millis >= :from_millis and taken_at_millis < :to_millis")
                .bind("probe", probeNo)
                .bind("from_millis", fromMillis)
                .bind("to_millis", toMillis)
                .execute();
    }

    private static Cells cells(int probeNo, Logged logged) {
        Reading reading = logged.reading();
        return new Cells()
                .with("probe_no", probeNo)
                .with("taken_at_millis", reading.takenAt().toEpochMilli())
                .withNumber("temperature_celsius", reading.temperatureCelsius())
                .withNumber("humidity_percent", reading.humidityPercent())
                .with("quality", reading.quality().key())
                .with("raw_line", logged.rawLine());
    }
}
