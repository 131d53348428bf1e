package org.moultwright.exchange;

import java.util.HashMap;
import java.util.Map;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.workflow.ReadingSource;

/** Readings gathered from their source. */
final class Gathered {
    private Gathered() {}

    static Map<String, ReadingSeries> of(ReadingSource source) {
        Map<String, ReadingSeries.Builder> builders = new HashMap<>();
        source.handOver((probe, reading) -> builders.computeIfAbsent(probe, code -> new ReadingSeries.Builder())
                .add(reading));
        Map<String, ReadingSeries> readings = new HashMap<>();
        builders.forEach((probe, builder) -> readings.put(probe, builder.build()));
        return readings;
    }
}
