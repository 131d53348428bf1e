package org.moultwright.store.reading;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;

/**
 * The instants at which a deed brought readings that were not there before, so that they can be taken out again. Many
 * stand packed in a row: of an instrument with a regular beat they cost next to nothing. Not safe to share.
 */
public final class BroughtReadings {
    private static final int READINGS_A_ROW = 4096;
    private static final RowReader<Brought> BROUGHT =
            row -> new Brought(row.text("code"), row.count("probe_no"), row.bytes("instants"));

    private final Handle handle;
    private final UUID deed;
    private final Map<Integer, ReadingSeries.Builder> waiting = new HashMap<>();
    private final Map<Integer, Integer> counts = new HashMap<>();

    /** @param deed is in the book already */
    public BroughtReadings(Handle handle, UUID deed) {
        this.handle = handle;
        this.deed = deed;
    }

    void add(int probeNo, ReadingSeries fresh) {
        ReadingSeries.Builder builder = waiting.computeIfAbsent(probeNo, probe -> new ReadingSeries.Builder());
        for (int i = 0; i < fresh.size(); i++) {
            builder.add(fresh.epochMillis(i), Double.NaN, Double.NaN, Quality.GOOD);
        }
        if (counts.merge(probeNo, fresh.size(), Integer::sum) >= READINGS_A_ROW) {
            write(probeNo);
        }
    }

    /** Writes what is not written yet. */
    void write() {
        List.copyOf(waiting.keySet()).forEach(this::write);
    }

    private void write(int probeNo) {
        ReadingSeries instants = waiting.remove(probeNo).build();
        counts.remove(probeNo);
        if (!instants.isEmpty()) {
            Rows.insert(
                    handle,
                    "brought_readings",
                    List.of(new Cells()
                            .with("deed", deed)
                            .with("probe_no", probeNo)
                            .with("readings", instants.size())
                            .with("instants", PackedSeries.pack(instants))));
        }
    }

    /**
     * Takes out of the log what a deed that stands no more brought into it.
     *
     * @param changed is told of every hour that has fewer readings now
     */
    public static void withdraw(Handle handle, UUID deed, Arrivals.Batch changed) {
        Map<Integer, RollUpChanges> changes = new HashMap<>();
        List<Long> rows = handle.createQuery("select row_no from brought_readings where deed = :deed order by row_no")
                .bind("deed", deed)
                .mapTo(Long.class)
                .list();
        for (long row : rows) {
            Brought brought = handle.createQuery("select brought_readings.*, probe.code from brought_readings"
                            + " join probe on probe.probe_no = brought_readings.probe_no where row_no = :row")
                    .bind("row", row)
                    .map(BROUGHT.mapper())
                    .one();
            byHour(brought.series())
                    .forEach((hourNo, instants) -> ReadingTables.remove(
                            handle,
                            brought.probeNo(),
                            hourNo,
                            instants,
                            changes.computeIfAbsent(brought.probeNo(), probe -> new RollUpChanges(handle, probe))));
            changed.add(brought.probe(), brought.series().epochMillis(0));
        }
        changes.values().forEach(RollUpChanges::write);
        handle.createUpdate("delete from brought_readings where deed = :deed")
                .bind("deed", deed)
                .execute();
    }

    /**
     * Reads every row.
     *
     * @throws IllegalArgumentException if one cannot be read
     */
    public static void requireReadable(Handle handle) {
        handle.createQuery("select instants from brought_readings")
                .mapTo(byte[].class)
                .useStream(rows -> rows.forEach(Brought::series));
    }

    private static Map<Long, Set<Long>> byHour(ReadingSeries instants) {
        Map<Long, Set<Long>> hours = new HashMap<>();
        for (int i = 0; i < instants.size(); i++) {
            hours.computeIfAbsent(Hours.of(instants.epochMillis(i)), hour -> new HashSet<>())
                    .add(instants.epochMillis(i));
        }
        return hours;
    }

    /** A row, still packed. */
    private record Brought(String probe, int probeNo, byte[] instants) {
        ReadingSeries series() {
            return series(instants);
        }

        static ReadingSeries series(byte[] instants) {
            ReadingSeries.Builder builder = new ReadingSeries.Builder();
            PackedSeries.unpackInto(builder, instants);
            return builder.build();
        }
    }
}
