package org.moultwright.workflow;

import java.util.function.BiConsumer;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Reading;

/** Hands over many readings one by one, so that they never all stand in memory. */
@FunctionalInterface
public interface ReadingSource {

    /** Gives every reading with its probe's code to {@code sink}, each probe's in order of time where possible. */
    void handOver(BiConsumer<String, Reading> sink);

    /** The readings a record holds itself. */
    static ReadingSource of(BroodRecord record) {
        return sink ->
                record.readings().forEach((probe, series) -> series.forEach(reading -> sink.accept(probe, reading)));
    }
}
