package org.moultwright.store.book;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ContainerMove;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Shelf;
import org.moultwright.domain.Stay;

/**
 * Moves of containers written at the desk. They concern every brood that knows the container. A brood whose tray
 * came into a container it did not know has that one's places, probes and set-points too, however they were told.
 */
final class WrittenMoves {
    private final MoveTable moves = new MoveTable();
    private final StayTable stays = new StayTable();
    private final ProbeStayTable probeStays = new ProbeStayTable();
    private final SetPointTable setPoints = new SetPointTable();

    void insert(Handle handle, UUID deed, List<ContainerMove> rows) {
        moves.insert(handle, deed, rows);
    }

    List<ContainerMove> ofDeed(Handle handle, UUID deed) {
        return moves.ofDeed(handle, deed);
    }

    /** Every move ever written. */
    List<ContainerMove> all(Handle handle) {
        return moves.all(handle);
    }

    Shelf shelf(Handle handle) {
        return new Shelf(stays.all(handle)).with(moves.standing(handle));
    }

    /** A brood with the moves that concern it. */
    BroodRecord joined(Handle handle, BroodRecord record) {
        List<ContainerMove> standing = moves.standing(handle);
        Set<String> own = KnownContainers.of(record);
        if (standing.stream().noneMatch(move -> own.contains(move.container()))) {
            return record;
        }
        List<Stay> ofRoom = stays.all(handle);
        Set<String> reached = reached(own, ofRoom, standing);
        Set<String> adopted = new HashSet<>(reached);
        adopted.removeAll(own);
        Shelf shelf = new Shelf(with(record.stays(), ofRoom, adopted, Stay::container));
        return record.withPlaces(
                shelf.with(standing.stream()
                                .filter(move -> reached.contains(move.container()))
                                .toList())
                        .stays(),
                with(record.probeStays(), probeStays.all(handle), adopted, ProbeStay::container),
                with(record.setPoints(), setPoints.all(handle), adopted, SetPoint::container));
    }

    /** What a brood knows, and what that came to stand in, and so on outwards. */
    private static Set<String> reached(Set<String> own, List<Stay> ofRoom, List<ContainerMove> standing) {
        Set<String> reached = new HashSet<>(own);
        boolean grows = true;
        while (grows) {
            Set<String> around = new HashSet<>();
            standing.stream()
                    .filter(move -> reached.contains(move.container()))
                    .forEach(move -> move.inside().ifPresent(around::add));
            ofRoom.stream()
                    .filter(stay -> reached.contains(stay.container()) && !own.contains(stay.container()))
                    .forEach(stay -> stay.inside().ifPresent(around::add));
            grows = reached.addAll(around);
        }
        return reached;
    }

    private static <T> List<T> with(List<T> own, List<T> ofRoom, Set<String> adopted, Function<T, String> containerOf) {
        List<T> both = new ArrayList<>(own);
        ofRoom.stream()
                .filter(row -> adopted.contains(containerOf.apply(row)))
                .distinct()
                .filter(row -> !own.contains(row))
                .forEach(both::add);
        return both;
    }
}
