package org.moultwright.store.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.workflow.ReadingLog;

/**
 * The readings of one probe in one hour with the raw lines they were read from.
 *
 * @param rawLines by the millisecond of their reading, for those that have one
 */
record HourOfReadings(ReadingSeries series, NavigableMap<Long, String> rawLines) {
    static final HourOfReadings EMPTY = new HourOfReadings(ReadingSeries.EMPTY, new TreeMap<>());

    static HourOfReadings of(Iterable<ReadingLog.Logged> readings) {
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        NavigableMap<Long, String> rawLines = new TreeMap<>();
        for (ReadingLog.Logged logged : readings) {
            Reading reading = logged.reading();
            series.add(reading);
            if (!logged.rawLine().isEmpty()) {
                rawLines.putIfAbsent(reading.takenAt().toEpochMilli(), logged.rawLine());
            }
        }
        return new HourOfReadings(series.build(), rawLines);
    }

    /** The readings one by one, each with its raw line. */
    List<ReadingLog.Logged> logged() {
        List<ReadingLog.Logged> logged = new ArrayList<>();
        series.forEach(reading -> logged.add(new ReadingLog.Logged(
                reading, rawLines.getOrDefault(reading.takenAt().toEpochMilli(), ""))));
        return logged;
    }

    /** These readings without those of some milliseconds. */
    HourOfReadings without(Set<Long> millis) {
        return of(logged().stream()
                .filter(logged -> !millis.contains(logged.reading().takenAt().toEpochMilli()))
                .toList());
    }

    /** These readings and those of others at instants this has none of. */
    HourOfReadings with(HourOfReadings others) {
        ReadingSeries.Builder both = new ReadingSeries.Builder();
        series.forEach(both::add);
        others.series.forEach(both::add);
        NavigableMap<Long, String> lines = new TreeMap<>(others.rawLines);
        series.forEach(reading -> lines.remove(reading.takenAt().toEpochMilli()));
        lines.putAll(rawLines);
        return new HourOfReadings(both.build(), lines);
    }
}
