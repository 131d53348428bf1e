package org.moultwright.exchange;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;

/**
 * Finds readings of an instant of which the same probe has another one with another value: only the first of them is
 * kept, which its keeper must know. The rows are read again, and kept meanwhile, only where some are not in order.
 */
final class RepeatedReadings {
    private final FolderFiles files;
    private final Map<String, Instant> lastByProbe = new HashMap<>();
    private final Set<String> unordered = new TreeSet<>();

    RepeatedReadings(FolderFiles files) {
        this.files = files;
    }

    /** Looks at the next row of the table. */
    void see(ReadingRows.ProbeReading row) {
        Instant at = row.reading().takenAt();
        Instant last = lastByProbe.put(row.probe(), at);
        if (last != null && !at.isAfter(last)) {
            unordered.add(row.probe());
        }
    }

    /** A sentence for each probe that contradicts itself. */
    List<String> notices() {
        Map<String, ReadingSeries> kept = kept();
        Map<String, Integer> contradicted = new TreeMap<>();
        each(row -> {
            if (!isAsKept(row.reading(), kept.getOrDefault(row.probe(), ReadingSeries.EMPTY))) {
                contradicted.merge(row.probe(), 1, Integer::sum);
            }
        });
        List<String> notices = new ArrayList<>();
        contradicted.forEach((probe, count) -> notices.add(
                ("readings.csv: of probe '%s' %d readings are of an instant that has another value already; "
                                + "the first is kept")
                        .formatted(probe, count)));
        return notices;
    }

    private Map<String, ReadingSeries> kept() {
        Map<String, ReadingSeries.Builder> builders = new HashMap<>();
        each(row -> builders.computeIfAbsent(row.probe(), probe -> new ReadingSeries.Builder())
                .add(row.reading()));
        Map<String, ReadingSeries> kept = new HashMap<>();
        builders.forEach((probe, builder) -> kept.put(probe, builder.build()));
        return kept;
    }

    private void each(Consumer<ReadingRows.ProbeReading> sink) {
        if (!unordered.isEmpty()) {
            new TableReader(files, new Problems()).each(ReadingRows.READINGS, placed -> {
                if (unordered.contains(placed.value().probe())) {
                    sink.accept(placed.value());
                }
            });
        }
    }

    private static boolean isAsKept(Reading reading, ReadingSeries kept) {
        Reading first = kept.reading(kept.indexAtOrAfter(reading.takenAt()));
        return first.temperatureCelsius() == reading.temperatureCelsius()
                && first.quality() == reading.quality()
                && Double.compare(first.humidityPercent(), reading.humidityPercent()) == 0;
    }
}
