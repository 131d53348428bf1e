package org.moultwright.store.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RollUp;
import org.moultwright.domain.RollUpLevel;
import org.moultwright.domain.RollUps;
import org.moultwright.workflow.ReadingLog.Logged;

/**
 * Both tables of readings as one: the latest hour of a probe in rows, so that a live reading costs one
 * small row; every hour before it packed. A reading already kept at an instant stays there.
 */
final class ReadingTables {
    private ReadingTables() {}

    /** Keeps readings of one probe as they come in, in any order, and says as what they are kept. */
    static List<Logged> append(Handle handle, int probeNo, List<Logged> readings) {
        long earliestMillis =
                readings.stream().mapToLong(ReadingTables::epochMillis).min().orElse(0);
        Placement placement = new Placement(handle, probeNo, earliestMillis);
        List<Logged> kept = readings.stream().map(placement::place).toList();
        if (!placement.fresh().isEmpty()) {
            appendPlaced(handle, probeNo, byHour(placement.fresh()));
        }
        return kept;
    }

    /** All that is kept of an hour from some millisecond in it on, in whichever table. */
    static List<Logged> held(Handle handle, int probeNo, long hourNo, long fromMillis) {
        List<Logged> held =
                new ArrayList<>(ReadingRowTable.between(handle, probeNo, fromMillis, Hours.startMillis(hourNo + 1)));
        ReadingHourTable.find(handle, probeNo, hourNo).ifPresent(hour -> held.addAll(hour.logged()));
        return held;
    }

    /**
     * Packs readings of an hour together with whatever is kept of that hour.
     *
     * @param changes is told of the hour, if it is another now
     * @return those that were not there before
     */
    static ReadingSeries pack(Handle handle, int probeNo, long hourNo, HourOfReadings more, RollUpChanges changes) {
        List<Logged> rows = rowsOf(handle, probeNo, hourNo);
        Optional<HourOfReadings> packed = ReadingHourTable.find(handle, probeNo, hourNo);
        HourOfReadings known = packed.orElse(HourOfReadings.EMPTY);
        HourOfReadings before = rows.isEmpty() ? known : known.with(HourOfReadings.of(rows));
        ReadingSeries fresh = more.series().without(before.series());
        HourOfReadings after = before.series().isEmpty() ? more : before.with(more);
        if (!rows.isEmpty()) {
            ReadingRowTable.delete(handle, probeNo, Hours.startMillis(hourNo), Hours.startMillis(hourNo + 1));
        }
        if (!fresh.isEmpty() || !rows.isEmpty()) {
            if (packed.isEmpty()) {
                ReadingHourTable.insert(handle, probeNo, hourNo, after);
            } else {
                ReadingHourTable.replace(handle, probeNo, hourNo, after);
            }
            changes.add(hourNo, after.series());
        }
        return fresh;
    }

    /**
     * Takes readings of an hour away, those that are there.
     *
     * @param changes is told of the hour, if it is packed
     */
    static void remove(Handle handle, int probeNo, long hourNo, Set<Long> millis, RollUpChanges changes) {
        Optional<HourOfReadings> packed = ReadingHourTable.find(handle, probeNo, hourNo);
        if (packed.isPresent()) {
            HourOfReadings left = packed.get().without(millis);
            ReadingHourTable.replace(handle, probeNo, hourNo, left);
            changes.add(hourNo, left.series());
        } else {
            millis.forEach(one -> ReadingRowTable.delete(handle, probeNo, one, one + 1));
        }
    }

    /** The readings at or after one millisecond and before another. */
    static ReadingSeries series(Handle handle, int probeNo, long fromMillis, long toMillis) {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        ReadingHourTable.unpackInto(builder, handle, probeNo, Hours.of(fromMillis), Hours.of(toMillis));
        ReadingRowTable.between(handle, probeNo, fromMillis, toMillis).forEach(row -> builder.add(row.reading()));
        return builder.build();
    }

    /** Hands over the same readings hour by hour, in order of time. */
    static void each(Handle handle, int probeNo, long fromMillis, long toMillis, Consumer<ReadingSeries> action) {
        NavigableMap<Long, List<Logged>> rows = byHour(ReadingRowTable.between(handle, probeNo, fromMillis, toMillis));
        ReadingHourTable.forEach(handle, probeNo, Hours.of(fromMillis), Hours.of(toMillis), (hourNo, packed) -> {
            handOver(rows.headMap(hourNo, false), action);
            ReadingSeries.Builder builder = new ReadingSeries.Builder();
            PackedSeries.unpackInto(builder, packed);
            action.accept(builder.build());
        });
        handOver(rows, action);
    }

    private static void handOver(NavigableMap<Long, List<Logged>> rows, Consumer<ReadingSeries> action) {
        while (!rows.isEmpty()) {
            action.accept(HourOfReadings.of(rows.pollFirstEntry().getValue()).series());
        }
    }

    /** The same without the humidity of what is packed, which is quicker. */
    static ReadingSeries temperatures(Handle handle, int probeNo, long fromMillis, long toMillis) {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        ReadingHourTable.unpackTemperaturesInto(builder, handle, probeNo, Hours.of(fromMillis), Hours.of(toMillis));
        ReadingRowTable.between(handle, probeNo, fromMillis, toMillis).forEach(row -> builder.add(row.reading()));
        return builder.build();
    }

    /** The roll-ups that begin at or after the one a millisecond falls into, and before another millisecond. */
    static List<RollUp> rollUps(Handle handle, int probeNo, RollUpLevel level, long fromMillis, long toMillis) {
        long start = level.startMillis(fromMillis);
        // A stretch without an end is asked for where there is none; it is as far as there can be readings.
        long end = level.startMillis(toMillis - 1) + level.millis();
        if (!RollUpSpan.KEPT.contains(level)) {
            return within(RollUps.of(temperatures(handle, probeNo, start, end), level), start, end);
        }
        List<RollUp> packed =
                RollUpTable.between(handle, probeNo, level, RollUpSpan.of(level, start), RollUpSpan.of(level, end - 1));
        ReadingSeries.Builder rows = new ReadingSeries.Builder();
        ReadingRowTable.between(handle, probeNo, start, end).forEach(row -> rows.add(row.reading()));
        List<RollUp> tail = RollUps.of(rows.build(), level);
        return within(tail.isEmpty() ? packed : RollUps.joined(packed, tail), start, end);
    }

    /** The instant of the first reading of all. */
    static Optional<Long> earliestMillis(Handle handle, int probeNo) {
        Optional<Long> packed = ReadingHourTable.earliestHour(handle, probeNo)
                .flatMap(hour -> ReadingHourTable.find(handle, probeNo, hour))
                .map(hour -> hour.series().epochMillis(0));
        Optional<Long> row = ReadingRowTable.earliestMillis(handle, probeNo);
        return Stream.of(packed, row).flatMap(Optional::stream).min(Comparator.naturalOrder());
    }

    /** Makes the roll-ups of all packed hours of a probe that has none. */
    static void rollUpAnew(Handle handle, int probeNo) {
        RollUpChanges changes = new RollUpChanges(handle, probeNo);
        ReadingHourTable.forEachHour(handle, probeNo, changes::add);
        changes.write();
    }

    static Optional<Reading> latest(Handle handle, int probeNo) {
        Optional<Reading> row = ReadingRowTable.latest(handle, probeNo);
        Optional<Reading> packed = ReadingHourTable.latest(handle, probeNo)
                .map(HourOfReadings::series)
                .map(series -> series.reading(series.size() - 1));
        return row.filter(reading -> packed.isEmpty()
                        || reading.takenAt().isAfter(packed.get().takenAt()))
                .or(() -> packed);
    }

    private static void appendPlaced(Handle handle, int probeNo, NavigableMap<Long, List<Logged>> hours) {
        Optional<Long> rowHour = ReadingRowTable.latest(handle, probeNo).map(ReadingTables::hour);
        long latestHour = Math.max(hours.lastKey(), rowHour.orElse(Long.MIN_VALUE));
        RollUpChanges changes = new RollUpChanges(handle, probeNo);
        rowHour.filter(hour -> hour < latestHour)
                .ifPresent(hour -> pack(handle, probeNo, hour, HourOfReadings.EMPTY, changes));
        hours.forEach((hour, ofHour) -> {
            if (hour == latestHour && !ReadingHourTable.exists(handle, probeNo, hour)) {
                ReadingRowTable.insert(handle, probeNo, ofHour);
            } else {
                pack(handle, probeNo, hour, HourOfReadings.of(ofHour), changes);
            }
        });
        changes.write();
    }

    private static long hour(Reading reading) {
        return Hours.of(reading.takenAt().toEpochMilli());
    }

    private static List<RollUp> within(List<RollUp> rollUps, long fromMillis, long toMillis) {
        return rollUps.stream()
                .filter(rollUp -> rollUp.startMillis() >= fromMillis && rollUp.startMillis() < toMillis)
                .toList();
    }

    private static List<Logged> rowsOf(Handle handle, int probeNo, long hourNo) {
        return ReadingRowTable.between(handle, probeNo, Hours.startMillis(hourNo), Hours.startMillis(hourNo + 1));
    }

    private static NavigableMap<Long, List<Logged>> byHour(List<Logged> readings) {
        NavigableMap<Long, List<Logged>> hours = new TreeMap<>();
        readings.forEach(reading -> hours.computeIfAbsent(hour(reading.reading()), hour -> new ArrayList<>())
                .add(reading));
        return hours;
    }

    static long epochMillis(Logged logged) {
        return logged.reading().takenAt().toEpochMilli();
    }
}
