package org.moultwright.workflow;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.moultwright.task.Once;

/** What was worked out of a room so far, gone with it. Safe to share. */
public final class WorkedOut {
    private final Map<RoomReading<?>, Once<?>> readings = new ConcurrentHashMap<>();

    @SuppressWarnings("unchecked")
    <T> T out(RoomReading<T> reading, RoomView room) {
        // Kept under a reading is only what that reading, or one that reads the same, made.
        Once<T> kept = (Once<T>) readings.computeIfAbsent(reading, asked -> new Once<>(() -> reading.read(room)));
        return kept.get();
    }
}
