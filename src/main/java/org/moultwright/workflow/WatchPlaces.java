package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.compute.alarm.Observation;
import org.moultwright.compute.calibration.CalibrationHistory;
import org.moultwright.compute.psychro.MeasuredAir;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.ColdestWall;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quantity;
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
 * @param walls how cold the coldest wall is, by container, where water on it is to be warned of
 * @param calibrations every one that stands, in the order written; those of humidity count
 */
public record WatchPlaces(
        List<ProbeStay> probeStays,
        Shelf shelf,
        List<SetPoint> setPoints,
        Map<String, ColdestWall> walls,
        List<Calibration> calibrations) {
    public static final WatchPlaces NONE = new WatchPlaces(List.of(), new Shelf(List.of()), List.of());

    public WatchPlaces {
        probeStays = List.copyOf(probeStays);
        setPoints = List.copyOf(setPoints);
        walls = Map.copyOf(walls);
        calibrations = List.copyOf(calibrations);
    }

    /** Places of which nothing tells how cold a wall is. */
    public WatchPlaces(List<ProbeStay> probeStays, Shelf shelf, List<SetPoint> setPoints) {
        this(probeStays, shelf, setPoints, Map.of(), List.of());
    }

    /** The same places, and what is known of their walls and their humidity. */
    public WatchPlaces withWalls(Map<String, ColdestWall> others, List<Calibration> found) {
        return new WatchPlaces(probeStays, shelf, setPoints, others, found);
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

    /** The coldest wall around a probe, where something else tells of it. */
    Optional<ColdestWall> wall(String probe, Instant at) {
        return stay(probe, at)
                .flatMap(stay -> Optional.ofNullable(walls.get(stay.container())))
                .filter(wall -> wall.probe().filter(probe::equals).isEmpty());
    }

    /** The standard uncertainty of what a probe measures. */
    double sdCelsius(String probe, Instant at) {
        return stay(probe, at).map(ProbeStay::sdCelsius).orElse(MeasuredAir.UNTRIED_SD_CELSIUS);
    }

    /**
     * A good reading with what belongs to it.
     *
     * @param onWall what the probe on the coldest wall says, if one lies there and is heard
     */
    Observation.Sample sample(String probe, Reading reading, Optional<MeasuredAir.Wall> onWall) {
        Instant at = reading.takenAt();
        double indicated = reading.temperatureCelsius();
        double celsius = stay(probe, at).map(stay -> stay.airCelsius(indicated)).orElse(indicated);
        return new Observation.Sample(
                indicated,
                celsius,
                reading.humidityPercent(),
                setPointCelsius(probe, at),
                wall(probe, at)
                        .flatMap(said -> air(probe, reading, celsius)
                                .flatMap(air -> air.wall(said, onWall).map(air::risk))));
    }

    private Optional<MeasuredAir> air(String probe, Reading reading, double celsius) {
        return MeasuredAir.of(
                celsius,
                sdCelsius(probe, reading.takenAt()),
                reading.humidityPercent(),
                CalibrationHistory.of(calibrations, probe, Quantity.HUMIDITY)
                        .inForce(reading.takenAt())
                        .map(Calibration::correction));
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
