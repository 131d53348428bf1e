package org.moultwright.store.reading;

import java.util.List;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.HandReading;
import org.moultwright.workflow.ReadingLog.Logged;

/** Readings written down by hand, in the log of all readings. */
public final class HandLog {
    private HandLog() {}

    /** Keeps a reading like one that comes in, and says as what it is kept. */
    public static HandReading append(Handle handle, HandReading read) {
        int probeNo = ProbeTable.numberOf(handle, read.probe());
        List<Logged> kept = ReadingTables.append(handle, probeNo, List.of(new Logged(read.reading(), "")));
        return new HandReading(read.probe(), kept.get(0).reading());
    }

    public static void remove(Handle handle, HandReading read) {
        ProbeTable.find(handle, read.probe())
                .ifPresent(probeNo ->
                        remove(handle, probeNo, read.reading().takenAt().toEpochMilli()));
    }

    private static void remove(Handle handle, int probeNo, long millis) {
        RollUpChanges changes = new RollUpChanges(handle, probeNo);
        ReadingTables.remove(handle, probeNo, Hours.of(millis), Set.of(millis), changes);
        changes.write();
    }
}
