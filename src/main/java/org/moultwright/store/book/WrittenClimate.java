package org.moultwright.store.book;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.ProbeStay;
import org.moultwright.store.climate.ExtremesTable;
import org.moultwright.store.climate.HandReadingTable;
import org.moultwright.store.climate.PlacingTable;
import org.moultwright.workflow.ClimateWriting;

/**
 * What is written of the climate without a wire. What came with a brood's folder is that brood's; what was written at
 * the desk belongs to every brood that knows the container.
 */
final class WrittenClimate {
    private final ExtremesTable extremes = new ExtremesTable();
    private final HandReadingTable readings = new HandReadingTable();
    private final PlacingTable placings = new PlacingTable();

    List<Extremes> extremesOfBrood(Handle handle, String brood) {
        return extremes.ofBrood(handle, brood);
    }

    /** A brood with what was written at the desk of the containers it knows. */
    BroodRecord joined(Handle handle, BroodRecord record) {
        Set<String> known = KnownContainers.of(record);
        Stream<ProbeStay> placed = placings.standing(handle).stream();
        Stream<Extremes> ofRoom = extremes.ofRoom(handle).stream();
        return record.withProbeStays(both(record.probeStays(), placed.filter(stay -> known.contains(stay.container()))))
                .withExtremes(Extremes.inForce(
                        both(record.extremes(), ofRoom.filter(one -> known.contains(one.container())))));
    }

    /** The stays that the desk did not write down already. */
    List<ProbeStay> withoutPlacings(Handle handle, List<ProbeStay> stays) {
        List<ProbeStay> placed = placings.standing(handle);
        return stays.stream().filter(stay -> !placed.contains(stay)).toList();
    }

    /** Adds what a folder brings and neither it brought before nor the desk wrote; says how many rows that were. */
    int takeIn(Handle handle, String brood, List<Extremes> rows) {
        Set<Extremes> known = new HashSet<>(extremes.ofBrood(handle, brood));
        known.addAll(extremes.ofRoom(handle));
        List<Extremes> missing = rows.stream().filter(known::add).toList();
        extremes.insertOfBrood(handle, brood, missing);
        return missing.size();
    }

    void insert(Handle handle, UUID deed, ClimateWriting written) {
        extremes.insert(handle, deed, written.extremes());
        placings.insert(handle, deed, written.placings());
        readings.insert(handle, deed, written.readings());
    }

    /** What a deed that is undone put into the log of readings is taken out of it. */
    void withdraw(Handle handle, UUID deed) {
        readings.withdraw(handle, deed);
    }

    ClimateWriting ofDeed(Handle handle, UUID deed) {
        return new ClimateWriting(
                extremes.ofDeed(handle, deed), readings.ofDeed(handle, deed), placings.ofDeed(handle, deed));
    }

    private static <T> List<T> both(List<T> own, Stream<T> ofRoom) {
        List<T> both = new ArrayList<>(own);
        ofRoom.filter(row -> !own.contains(row)).forEach(both::add);
        return both;
    }
}
