package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.alarm.Observation;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Reading;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Shelf;
import org.moultwright.domain.Stay;

/**
 * Where probes measure, how far off they read, and what was set there: what a reading means to the watch.
 *
 * @param probeStays which probe measured what, as calibrated by now
 * @param shelf where containers stood
 * @param setPoints what containers were set to
 */
public record WatchPlaces(List<ProbeStay> probeStays, Shelf shelf, List<SetPoint> setPoints) {
    public static final WatchPlaces NONE = new WatchPlaces(List.of(), new Shelf(List.of()), List.of());

    public WatchPlaces {
        probeStays = List.copyOf(probeStays);
        setPoints = List.copyOf(setPoints);
    }

    /** The places of all broods in a book. */
    public static WatchPlaces of(BroodBook book) {
        return of(book.broods().stream()
                .flatMap(brood -> book.find(brood.code()).stream())
                .toList());
    }

    /** The places of these broods. */
    public static WatchPlaces of(List<BroodRecord> records) {
        List<Stay> stays = records.stream()
                .flatMap(record -> record.stays().stream())
                .distinct()
                .toList();
        return new WatchPlaces(
                records.stream()
                        .flatMap(record -> record.probeStays().stream())
                        .distinct()
                        .toList(),
                new Shelf(stays),
                records.stream()
                        .flatMap(record -> record.setPoints().stream())
                        .distinct()
                        .toList());
    }

    /** The stay of a probe at an instant, the one begun last. */
    public Optional<ProbeStay> stay(String probe, Instant at) {
        return probeStays.stream()
                .filter(stay -> stay.probe().equals(probe) && stay.span().contains(at))
                .reduce((earlier, later) -> later);
    }

    /**
     * What a probe watches: its container; with the probe's code where several measure there; the code alone
     * where nobody wrote down where it is.
     */
    public String name(String probe, Instant at) {
        return stay(probe, at)
                .map(ProbeStay::container)
                .map(container -> isShared(container, at) ? container + ", " + probe : container)
                .orElse(probe);
    }

    /** What the container of a probe is set to, or the nearest around it that is set; NaN where none is. */
    public double setPointCelsius(String probe, Instant at) {
        return stay(probe, at).stream()
                .flatMap(stay -> shelf.pathOf(stay.container(), at).stream())
                .flatMap(container -> setPointOf(container, at).stream())
                .findFirst()
                .map(SetPoint::temperatureCelsius)
                .orElse(Double.NaN);
    }

    /** A good reading with what belongs to it. Nothing measures the wall, so that nothing is said of it. */
    Observation.Sample sample(String probe, Reading reading) {
        double indicated = reading.temperatureCelsius();
        return new Observation.Sample(
                indicated,
                stay(probe, reading.takenAt())
                        .map(stay -> stay.airCelsius(indicated))
                        .orElse(indicated),
                reading.humidityPercent(),
                setPointCelsius(probe, reading.takenAt()),
                Optional.empty());
    }

    /** A thermometer read by hand is not watched, so that it takes no name from the probe that is. */
    private boolean isShared(String container, Instant at) {
        return probeStays.stream()
                        .filter(stay -> stay.container().equals(container)
                                && stay.span().contains(at))
                        .map(ProbeStay::probe)
                        .filter(probe -> !HandReading.isByHand(probe))
                        .distinct()
                        .count()
                > 1;
    }

    private Optional<SetPoint> setPointOf(String container, Instant at) {
        return setPoints.stream()
                .filter(point ->
                        point.container().equals(container) && point.span().contains(at))
                .reduce((earlier, later) -> later);
    }
}
