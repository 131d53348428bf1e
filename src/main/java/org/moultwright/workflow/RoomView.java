package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.LessonNote;
import org.moultwright.domain.Reading;
import org.moultwright.domain.Shelf;

/**
 * The whole room as it stood at one instant: what every screen shows, computed once.
 *
 * @param now the instant
 * @param broods all broods, the one laid first leading
 * @param latestReadings the last reading of each probe up to now, by probe code
 * @param lastDeed what Undo would take back
 * @param leftOut completed broods from which nothing is to be learned, by code
 * @param shelf where all containers stood
 * @param awaitsDates whether forecasts are still being worked out: none of the broods has one yet
 * @param worked what was worked out of it so far
 */
public record RoomView(
        Instant now,
        List<BroodView> broods,
        Map<String, Reading> latestReadings,
        Optional<Deed.Summary> lastDeed,
        Map<String, LessonNote> leftOut,
        Shelf shelf,
        boolean awaitsDates,
        WorkedOut worked) {
    public static final RoomView EMPTY = new RoomView(Instant.EPOCH, List.of(), Map.of(), Optional.empty());

    public RoomView {
        broods = List.copyOf(broods);
        latestReadings = Map.copyOf(latestReadings);
        leftOut = Map.copyOf(leftOut);
    }

    /** A room of which nothing was worked out yet. */
    public RoomView(
            Instant now,
            List<BroodView> broods,
            Map<String, Reading> latestReadings,
            Optional<Deed.Summary> lastDeed,
            Map<String, LessonNote> leftOut,
            Shelf shelf,
            boolean awaitsDates) {
        this(now, broods, latestReadings, lastDeed, leftOut, shelf, awaitsDates, new WorkedOut());
    }

    /** A room in which every completed brood teaches, without a container but those its broods know. */
    public RoomView(
            Instant now, List<BroodView> broods, Map<String, Reading> latestReadings, Optional<Deed.Summary> lastDeed) {
        this(
                now,
                broods,
                latestReadings,
                lastDeed,
                Map.of(),
                new Shelf(broods.stream()
                        .flatMap(brood -> brood.record().stays().stream())
                        .distinct()
                        .toList()),
                false);
    }

    /**
     * Two that say the same are the same, whatever was worked out of them. Written out, as is the hash: what Java puts a
     * record's own together of when it is first asked holds up a start.
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || (other instanceof RoomView room && saysTheSame(room));
    }

    @Override
    public int hashCode() {
        return now.hashCode();
    }

    private boolean saysTheSame(RoomView room) {
        return now.equals(room.now)
                && awaitsDates == room.awaitsDates
                && lastDeed.equals(room.lastDeed)
                && latestReadings.equals(room.latestReadings)
                && leftOut.equals(room.leftOut)
                && shelf.equals(room.shelf)
                && broods.equals(room.broods);
    }

    /** Trays that hold animals, of all broods, in shelf order. */
    public List<TrayView> occupiedTrays() {
        return broods.stream()
                .flatMap(brood -> brood.trays().stream())
                .filter(tray -> tray.alive() > 0)
                .toList();
    }

    public Optional<BroodView> brood(String code) {
        return broods.stream().filter(brood -> brood.code().equals(code)).findFirst();
    }
}
