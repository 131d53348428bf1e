package org.moultwright.store.reading;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.workflow.ReadingSource;

/**
 * Takes in a stream of readings within a transaction. Holds no more than an hour of each probe in memory
 * as long as each probe's readings come in order of time; any other order is slower, not wrong.
 */
public final class ReadingIntake {
    private final Handle handle;
    private final Optional<BroughtReadings> brought;
    private final Map<String, Gathering> gatherings = new HashMap<>();
    private long added;

    private ReadingIntake(Handle handle, Optional<BroughtReadings> brought) {
        this.handle = handle;
        this.brought = brought;
    }

    /** Keeps what the source hands over and says how many readings were not there before. */
    public static long takeIn(Handle handle, ReadingSource source) {
        return takeIn(handle, source, Optional.empty());
    }

    /**
     * The same.
     *
     * @param brought is told of those that were not there before
     */
    public static long takeIn(Handle handle, ReadingSource source, Optional<BroughtReadings> brought) {
        ReadingIntake intake = new ReadingIntake(handle, brought);
        source.handOver(intake::accept);
        intake.gatherings.values().forEach(intake::finish);
        brought.ifPresent(BroughtReadings::write);
        return intake.added;
    }

    private void accept(String probe, Reading reading) {
        Gathering gathering = gatherings.computeIfAbsent(
                probe, code -> new Gathering(handle, ProbeTable.numberOf(handle, code), reading));
        if (Hours.of(reading.takenAt().toEpochMilli()) != gathering.hourNo) {
            pack(gathering);
            gathering.start(reading);
        }
        gathering.builder.add(reading);
    }

    private void finish(Gathering gathering) {
        pack(gathering);
        gathering.changes.write();
    }

    private void pack(Gathering gathering) {
        HourOfReadings hour = new HourOfReadings(gathering.builder.build(), new TreeMap<>());
        ReadingSeries fresh = ReadingTables.pack(handle, gathering.probeNo, gathering.hourNo, hour, gathering.changes);
        added += fresh.size();
        brought.ifPresent(noted -> noted.add(gathering.probeNo, fresh));
    }

    /** The hour of a probe that is being gathered. */
    private static final class Gathering {
        private final int probeNo;
        private final RollUpChanges changes;
        private long hourNo;
        private ReadingSeries.Builder builder = new ReadingSeries.Builder();

        private Gathering(Handle handle, int probeNo, Reading first) {
            this.probeNo = probeNo;
            this.changes = new RollUpChanges(handle, probeNo);
            start(first);
        }

        private void start(Reading first) {
            hourNo = Hours.of(first.takenAt().toEpochMilli());
            builder = new ReadingSeries.Builder();
        }
    }
}
