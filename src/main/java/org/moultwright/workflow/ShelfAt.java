package org.moultwright.workflow;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Shelf;

/**
 * The shelf as it stood at an instant: containers inside each other, who lived in them, what air was measured there.
 *
 * @param at the instant
 * @param outermost what stands in nothing, each with all that stands in it
 */
public record ShelfAt(Instant at, List<Standing> outermost) {
    /** The shelf when the room was read. */
    public static final RoomReading<ShelfAt> NOW = room -> of(room, room.now());

    public static final ShelfAt NOTHING = new ShelfAt(Instant.EPOCH, List.of());

    public ShelfAt {
        outermost = List.copyOf(outermost);
    }

    /** The shelf of a room now, or at an instant before that. */
    public static ShelfAt of(RoomView room, Instant at) {
        List<BroodRecord> records =
                room.broods().stream().map(BroodView::record).toList();
        return new ShelfBuilding(room.shelf(), records, ShelfAir.of(room, at), at).build();
    }

    /** The shelf at an instant as far as containers and animals go; nothing measured. */
    static ShelfAt of(BroodBook book, Shelf shelf, Instant at) {
        return new ShelfBuilding(shelf, records(book), ShelfAir.NONE, at).build();
    }

    static List<BroodRecord> records(BroodBook book) {
        return book.broods().stream()
                .flatMap(brood -> book.find(brood.code()).stream())
                .toList();
    }

    /** The same shelf a while later, with what probes on wires have said since it was read. */
    public ShelfAt heard(List<WatchView.Place> places, Instant now) {
        return new ShelfAt(now, HeardAir.of(places).over(outermost, List.of()));
    }

    /** Everything on it, each container before what stands in it. */
    public List<Standing> all() {
        List<Standing> all = new ArrayList<>();
        outermost.forEach(standing -> collect(standing, all));
        return all;
    }

    public Optional<Standing> find(String code) {
        return outermost.stream()
                .flatMap(ShelfAt::flat)
                .filter(one -> one.code().equals(code))
                .findFirst();
    }

    private static void collect(Standing standing, List<Standing> all) {
        all.add(standing);
        standing.contents().forEach(inside -> collect(inside, all));
    }

    private static Stream<Standing> flat(Standing standing) {
        return Stream.concat(Stream.of(standing), standing.contents().stream().flatMap(ShelfAt::flat));
    }
}
