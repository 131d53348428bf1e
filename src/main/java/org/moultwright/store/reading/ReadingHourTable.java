package org.moultwright.store.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;

/** Readings packed by the hour. */
final class ReadingHourTable {
    private static final int HOURS_AT_A_TIME = 512;
    private static final RowReader<HourOfReadings> HOUR =
            row -> hour(row.bytes("series"), row.optionalBytes("raw_lines"));

    private ReadingHourTable() {}

    static Optional<HourOfReadings> find(Handle handle, int probeNo, long hourNo) {
        return handle.createQuery("select * from reading_hour where probe_no = :probe and hour_no = :hour")
                .bind("probe", probeNo)
                .bind("hour", hourNo)
                .map(HOUR.mapper())
                .findFirst();
    }

    static boolean exists(Handle handle, int probeNo, long hourNo) {
        return handle.createQuery("select hour_no from reading_hour where probe_no = :probe and hour_no = :hour")
                .bind("probe", probeNo)
                .bind("hour", hourNo)
                .mapTo(Long.class)
                .findFirst()
                .isPresent();
    }

    static Optional<HourOfReadings> latest(Handle handle, int probeNo) {
        return handle.createQuery("select * from reading_hour where probe_no = :probe"
                        + " order by probe_no desc, hour_no desc fetch first 1 row only")
                .bind("probe", probeNo)
                .map(HOUR.mapper())
                .findFirst();
    }

    /** Adds the readings of all hours from one to another, both included, to a builder in order of time. */
    static void unpackInto(ReadingSeries.Builder builder, Handle handle, int probeNo, long fromHour, long toHour) {
        forEach(handle, probeNo, fromHour, toHour, (hour, bytes) -> PackedSeries.unpackInto(builder, bytes));
    }

    /** The same without their humidity, which is quicker. */
    static void unpackTemperaturesInto(
            ReadingSeries.Builder builder, Handle handle, int probeNo, long fromHour, long toHour) {
        forEach(
                handle,
                probeNo,
                fromHour,
                toHour,
                (hour, bytes) -> PackedSeries.unpackTemperaturesInto(builder, bytes));
    }

    static Optional<Long> earliestHour(Handle handle, int probeNo) {
        return handle.createQuery("select hour_no from reading_hour where probe_no = :probe"
                        + " order by probe_no, hour_no fetch first 1 row only")
                .bind("probe", probeNo)
                .mapTo(Long.class)
                .findFirst();
    }

    /** Gives every hour with its readings but their humidity, in order of time. */
    static void forEachHour(Handle handle, int probeNo, BiConsumer<Long, ReadingSeries> action) {
        forEach(handle, probeNo, Long.MIN_VALUE, Long.MAX_VALUE, (hourNo, packed) -> {
            ReadingSeries.Builder builder = new ReadingSeries.Builder();
            PackedSeries.unpackTemperaturesInto(builder, packed);
            action.accept(hourNo, builder.build());
        });
    }

    /** Gives every hour from one to another, both included, as it is packed, in order of time. */
    static void forEach(Handle handle, int probeNo, long fromHour, long toHour, BiConsumer<Long, byte[]> action) {
        forEach(handle, probeNo, fromHour, toHour, row -> row.bytes("series"), action);
    }

    /**
     * Gives every hour from one to another, both included, in order of time. It is asked for some days at a time, since
     * the database gathers all that a question finds before it gives the first.
     */
    static <T> void forEach(
            Handle handle, int probeNo, long fromHour, long toHour, RowReader<T> reader, BiConsumer<Long, T> action) {
        RowReader<Map.Entry<Long, T>> numbered = row -> Map.entry(row.number("hour_no"), reader.read(row));
        long next = fromHour;
        List<Map.Entry<Long, T>> found;
        do {
            found = handle.createQuery("select * from reading_hour where probe_no = :probe"
                            + " and hour_no >= :from_hour and hour_no <= :to_hour order by probe_no, hour_no"
                            + " fetch first :most rows only")
                    .bind("probe", probeNo)
                    .bind("from_hour", next)
                    .bind("to_hour", toHour)
                    .bind("most", HOURS_AT_A_TIME)
                    .map(numbered.mapper())
                    .list();
            found.forEach(hour -> action.accept(hour.getKey(), hour.getValue()));
            next = found.isEmpty() ? next : found.get(found.size() - 1).getKey() + 1;
        } while (found.size() == HOURS_AT_A_TIME);
    }

    static void insert(Handle handle, int probeNo, long hourNo, HourOfReadings hour) {
        Rows.insert(handle, "reading_hour", List.of(cells(probeNo, hourNo, hour)));
    }

    static void replace(Handle handle, int probeNo, long hourNo, HourOfReadings hour) {
        handle.createUpdate("delete from reading_hour where probe_no = :probe and hour_no = :hour")
                .bind("probe", probeNo)
                .bind("hour", hourNo)
                .execute();
        if (!hour.series().isEmpty()) {
            insert(handle, probeNo, hourNo, hour);
        }
    }

    private static Cells cells(int probeNo, long hourNo, HourOfReadings hour) {
        return new Cells()
                .with("probe_no", probeNo)
                .with("hour_no", hourNo)
                .with("readings", hour.series().size())
                .with("series", PackedSeries.pack(hour.series()))
                .with(
                        "raw_lines",
                        Optional.of(hour.rawLines())
                                .filter(lines -> !lines.isEmpty())
                                .map(lines -> PackedLines.pack(lines, hour.series())));
    }

    /** What two cells of a row hold; it fails if they are damaged or do not belong together. */
    static HourOfReadings hour(byte[] series, Optional<byte[]> rawLines) {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        PackedSeries.unpackInto(builder, series);
        ReadingSeries readings = builder.build();
        return new HourOfReadings(
                readings,
                rawLines.map(lines -> PackedLines.unpack(lines, readings)).orElseGet(TreeMap::new));
    }
}
