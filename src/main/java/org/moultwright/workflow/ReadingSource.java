package org.moultwright.workflow;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;

/** Hands over many readings one by one, so that they never all stand in memory. */
@FunctionalInterface
public interface ReadingSource {

    /** Gives every reading with its probe's code to {@code sink}, each probe's in order of time where possible. */
    void handOver(BiConsumer<String, Reading> sink);

    /** All of them, by probe code, for where they may all stand in memory. */
    default Map<String, ReadingSeries> gathered() {
        Map<String, ReadingSeries.Builder> builders = new HashMap<>();
        handOver((probe, reading) -> builders.computeIfAbsent(probe, code -> new ReadingSeries.Builder())
                .add(reading));
        Map<String, ReadingSeries> readings = new HashMap<>();
        builders.forEach((probe, builder) -> readings.put(probe, builder.build()));
        return readings;
    }

    /** The readings a record holds itself. */
    static ReadingSource of(BroodRecord record) {
        return sink -> new TreeMap<>(record.readings())
                .forEach((probe, series) -> series.forEach(reading -> sink.accept(probe, reading)));
    }
}
