package org.moultwright.compute.climate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.stream.Stream;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.ReadingSeries;

/** All that was measured up to an instant, to be laid over the places some animals were in. */
final class Measurements {
    private static final Comparator<MeasuredTrack> SUREST_THEN_LATEST = Comparator.comparingDouble(
                    (MeasuredTrack track) -> track.stay().sdCelsius())
            .thenComparing(track -> track.stay().span().from(), Comparator.reverseOrder());

    /** Of one container the surest first, and what was only remembered last. */
    private final List<Track> tracks;

    Measurements(BroodRecord record, Instant until) {
        Stream<MeasuredTrack> measured = record.probeStays().stream()
                .map(stay -> MeasuredTrack.of(stay, readingsOf(record, stay), until))
                .sorted(SUREST_THEN_LATEST);
        this.tracks = Stream.concat(measured, RememberedTrack.all(record.extremes(), until).stream())
                .toList();
    }

    private static ReadingSeries readingsOf(BroodRecord record, ProbeStay stay) {
        return record.readings().getOrDefault(stay.probe(), ReadingSeries.EMPTY);
    }

    /** When the first measured stretch begins. */
    OptionalLong firstMillis() {
        return tracks.stream()
                .flatMapToLong(track -> track.firstMillis().stream())
                .min();
    }

    /** The residences end to end: at each instant told by the innermost container of which anything is known, or a hole. */
    List<Stretch> over(List<Residence> residences) {
        List<Stretch> stretches = new ArrayList<>();
        for (Residence residence : residences) {
            Place place = residence.place();
            lay(residence.fromMillis(), residence.toMillis(), place, tracksIn(place), stretches);
        }
        return stretches;
    }

    private static void lay(long from, long to, Place place, List<Track> innermostFirst, List<Stretch> into) {
        if (from >= to) {
            return;
        }
        if (innermostFirst.isEmpty()) {
            into.add(new Stretch.Hole(from, to, place));
            return;
        }
        Track track = innermostFirst.get(0);
        List<Track> furtherOut = innermostFirst.subList(1, innermostFirst.size());
        Function<Ramp, LivedPiece> pieces = track.piecesIn(place);
        long laidTo = from;
        for (Ramp ramp : track.between(from, to)) {
            lay(laidTo, ramp.fromMillis(), place, furtherOut, into);
            into.add(new Stretch.Measured(pieces.apply(ramp), place));
            laidTo = ramp.toMillis();
        }
        lay(laidTo, to, place, furtherOut, into);
    }

    private List<Track> tracksIn(Place place) {
        return place.containers().stream()
                .flatMap(container ->
                        tracks.stream().filter(track -> track.container().equals(container)))
                .toList();
    }
}
