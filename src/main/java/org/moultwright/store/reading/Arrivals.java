package org.moultwright.store.reading;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Reading;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.ReadingSource;

/**
 * Which hours of which probes got or lost readings since the store was opened, in the order they did. Complete, since a store is open in one program only.
 *
 * <p>Holds at most one note for each hour of a probe. Safe to share.
 */
public final class Arrivals {
    private final Map<String, Deque<Arrival>> byProbe = new HashMap<>();
    private long last;

    /** Begins to note what is about to be kept; it counts as kept once this is closed, whatever came of it. */
    public Batch begin() {
        return new Batch();
    }

    synchronized long mark() {
        return last;
    }

    /** The beginning of the earliest hour of a probe that got readings after a mark. */
    synchronized Optional<Instant> earliestSince(String probe, long mark) {
        return byProbe.getOrDefault(probe, new ArrayDeque<>()).stream()
                .filter(arrival -> arrival.number() > mark)
                .findFirst()
                .map(arrival -> Instant.ofEpochMilli(Hours.startMillis(arrival.hourNo())));
    }

    /** An earlier note of a later hour is told by this one too, so that hours rise along the notes. */
    private synchronized void note(Map<String, Long> earliestHours) {
        last++;
        earliestHours.forEach((probe, hourNo) -> {
            Deque<Arrival> arrivals = byProbe.computeIfAbsent(probe, code -> new ArrayDeque<>());
            while (!arrivals.isEmpty() && arrivals.getLast().hourNo() >= hourNo) {
                arrivals.removeLast();
            }
            arrivals.addLast(new Arrival(last, hourNo));
        });
    }

    private record Arrival(long number, long hourNo) {}

    /** What one transaction keeps. Not safe to share. */
    public final class Batch implements AutoCloseable {
        private final Map<String, Long> earliestHours = new HashMap<>();

        public void add(String probe, Reading reading) {
            add(probe, reading.takenAt().toEpochMilli());
        }

        void add(String probe, long epochMillis) {
            earliestHours.merge(probe, Hours.of(epochMillis), Math::min);
        }

        /** Keeps live readings of a probe within a transaction, noted, and says as what they are kept. */
        public List<Logged> append(Handle handle, String probe, List<Logged> readings) {
            readings.forEach(logged -> add(probe, logged.reading()));
            return ReadingTables.append(handle, ProbeTable.numberOf(handle, probe), readings);
        }

        /** The same readings, noted as they are handed over. */
        public ReadingSource noting(ReadingSource readings) {
            return sink -> {
                BiConsumer<String, Reading> noted = this::add;
                readings.handOver(noted.andThen(sink));
            };
        }

        @Override
        public void close() {
            note(earliestHours);
        }
    }
}
