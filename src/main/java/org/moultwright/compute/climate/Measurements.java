package org.moultwright.compute.climate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.ReadingSeries;

/** All that was measured up to an instant, to be laid over the places some animals were in. */
final class Measurements {
    private static final Comparator<MeasuredTrack> SUREST_THEN_LATEST = Comparator.comparingDouble(
                    (MeasuredTrack track) -> track.stay().sdCelsius())
            .thenComparing(track -> track.stay().span().from(), Comparator.reverseOrder());

    private final List<MeasuredTrack> tracks;

    Measurements(BroodRecord record, Instant until) {
        this.tracks = record.probeStays().stream()
                .map(stay -> MeasuredTrack.of(stay, readingsOf(record, stay), until))
                .sorted(SUREST_THEN_LATEST)
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

    /** The residences end to end: at each instant measured by the innermost probe that did, or a hole. */
    List<Stretch> over(List<Residence> residences) {
        List<Stretch> stretches = new ArrayList<>();
        for (Residence residence : residences) {
            Place place = residence.place();
            lay(residence.fromMillis(), residence.toMillis(), place, tracksIn(place), stretches);
        }
        return stretches;
    }

    private static void lay(long from, long to, Place place, List<MeasuredTrack> innermostFirst, List<Stretch> into) {
        if (from >= to) {
            return;
        }
        if (innermostFirst.isEmpty()) {
            into.add(new Stretch.Hole(from, to, place));
            return;
        }
        MeasuredTrack track = innermostFirst.get(0);
        List<MeasuredTrack> furtherOut = innermostFirst.subList(1, innermostFirst.size());
        TemperatureSource source =
                new TemperatureSource.Probe(track.stay().probe(), track.stay().container(), place.isAssumed());
        double sdCelsius = Uncertainty.ofProbe(track.stay(), place);
        long laidTo = from;
        for (Ramp ramp : track.between(from, to)) {
            lay(laidTo, ramp.fromMillis(), place, furtherOut, into);
            into.add(new Stretch.Measured(new LivedPiece(ramp, source, sdCelsius), place));
            laidTo = ramp.toMillis();
        }
        lay(laidTo, to, place, furtherOut, into);
    }

    private List<MeasuredTrack> tracksIn(Place place) {
        return place.containers().stream()
                .flatMap(container ->
                        tracks.stream().filter(track -> track.stay().container().equals(container)))
                .toList();
    }
}
