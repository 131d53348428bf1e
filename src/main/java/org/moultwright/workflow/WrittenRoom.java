package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Reading;
import org.moultwright.domain.Shelf;

/**
 * All that is written of a room, without measured histories: what a desk shows before anything is worked out.
 *
 * @param broods all broods, the one laid first leading
 * @param latestReadings the last reading of each probe, by probe code
 * @param latestDeeds what was done last, the newest first
 * @param shelf where all containers stood
 */
public record WrittenRoom(
        List<BroodRecord> broods, Map<String, Reading> latestReadings, List<Deed.Summary> latestDeeds, Shelf shelf) {
    /** A clock set back is noticed among so many deeds. */
    public static final int DEEDS_LOOKED_AT = 50;

    public WrittenRoom {
        broods = List.copyOf(broods);
        latestReadings = Map.copyOf(latestReadings);
        latestDeeds = List.copyOf(latestDeeds);
    }

    /** The room at an instant; what was written for later is not in it. */
    public RoomView at(Instant now) {
        return new RoomView(
                now,
                broods.stream().map(record -> written(record.until(now), now)).toList(),
                until(now, latestReadings),
                latestDeeds.stream().findFirst(),
                Map.of(),
                shelf,
                true);
    }

    private static BroodView written(BroodRecord record, Instant now) {
        return new BroodView(record, TrayView.all(record, Optional.empty(), now), Optional.empty());
    }

    /** A reading from before the clock was set back lies ahead of now; what was read since is then the latest. */
    static Map<String, Reading> until(Instant now, Map<String, Reading> latest) {
        return latest.entrySet().stream()
                .filter(probe -> !probe.getValue().takenAt().isAfter(now))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }
}
