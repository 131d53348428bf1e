package org.moultwright.workflow;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.ReadingSeries;

/**
 * The whole history of every probe that measures for some brood, read from the log once for all of them.
 *
 * <p>What was read stays in memory; asked again, only what the log has kept since is read, from its earliest
 * instant on. So an answer is always what the log would give, whenever and in whatever order readings came.
 * Not safe to share.
 */
final class ProbeHistories {
    private static final Instant END_OF_TIME = Instant.parse("9999-01-01T00:00:00Z");

    private final ReadingLog log;
    private final Map<String, Remembered> remembered = new HashMap<>();

    ProbeHistories(ReadingLog log) {
        this.log = log;
    }

    /** The readings up to and including an instant of every probe that measured for a brood, by probe code. */
    Map<String, ReadingSeries> of(BroodRecord record, Instant until) {
        Map<String, ReadingSeries> byProbe = new HashMap<>();
        for (ProbeStay stay : record.probeStays()) {
            byProbe.computeIfAbsent(stay.probe(), probe -> whole(probe).until(until));
        }
        return byProbe;
    }

    private ReadingSeries whole(String probe) {
        // Asked before reading: what is kept in between is then read once more, never missed.
        long mark = log.mark();
        ReadingSeries series = Optional.ofNullable(remembered.get(probe))
                .map(known -> upToDate(probe, known))
                .orElseGet(() -> log.series(probe, Instant.EPOCH, END_OF_TIME));
        remembered.put(probe, new Remembered(mark, series));
        return series;
    }

    private ReadingSeries upToDate(String probe, Remembered known) {
        return log.earliestSince(probe, known.mark())
                .map(from -> known.series().replacedFrom(from, log.series(probe, from, END_OF_TIME)))
                .orElse(known.series());
    }

    /** What was read of a probe, and the log's mark before it was read. */
    private record Remembered(long mark, ReadingSeries series) {}
}
