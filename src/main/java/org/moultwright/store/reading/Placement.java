package org.moultwright.store.reading;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Reading;
import org.moultwright.workflow.ReadingLog.Logged;

/**
 * Finds readings of one probe a millisecond each. None takes another's place: where an instant is taken, as
 * after the clock was set back, the next free millisecond is found; a reading that is there already keeps its
 * own.
 */
final class Placement {
    private static final Duration STEP = Duration.ofMillis(1);

    private final Handle handle;
    private final int probeNo;
    private final long fromMillis;
    private final Map<Long, Map<Long, Logged>> heldByHour = new HashMap<>();
    private final List<Logged> fresh = new ArrayList<>();

    /** @param fromMillis no reading to be placed is earlier */
    Placement(Handle handle, int probeNo, long fromMillis) {
        this.handle = handle;
        this.probeNo = probeNo;
        this.fromMillis = fromMillis;
    }

    /** The reading as it is to be kept, or is kept already. */
    Logged place(Logged logged) {
        Logged placed = logged;
        while (true) {
            long millis = ReadingTables.epochMillis(placed);
            Map<Long, Logged> held = heldByHour.computeIfAbsent(Hours.of(millis), this::held);
            Logged there = held.putIfAbsent(millis, placed);
            if (there == null) {
                fresh.add(placed);
                return placed;
            }
            if (saysTheSame(there, placed)) {
                return placed;
            }
            placed = later(placed);
        }
    }

    /** Those placed so far that are not kept yet. */
    List<Logged> fresh() {
        return fresh;
    }

    private Map<Long, Logged> held(long hourNo) {
        Map<Long, Logged> held = new HashMap<>();
        ReadingTables.held(handle, probeNo, hourNo, Math.max(fromMillis, Hours.startMillis(hourNo)))
                .forEach(logged -> held.put(ReadingTables.epochMillis(logged), logged));
        return held;
    }

    private static boolean saysTheSame(Logged one, Logged other) {
        return Double.compare(
                                one.reading().temperatureCelsius(),
                                other.reading().temperatureCelsius())
                        == 0
                && Double.compare(
                                one.reading().humidityPercent(), other.reading().humidityPercent())
                        == 0
                && one.reading().quality() == other.reading().quality()
                && one.rawLine().equals(other.rawLine());
    }

    private static Logged later(Logged logged) {
        Reading reading = logged.reading();
        return new Logged(
                new Reading(
                        reading.takenAt().plus(STEP),
                        reading.temperatureCelsius(),
                        reading.humidityPercent(),
                        reading.quality()),
                logged.rawLine());
    }
}
