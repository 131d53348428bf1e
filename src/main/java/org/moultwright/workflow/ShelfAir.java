package org.moultwright.workflow;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.workflow.Standing.Air;
import org.moultwright.workflow.Standing.Source;

/**
 * What was known of the air in each container at an instant: its probe's last good reading with the correction, and
 * what it was set to. A probe on a wire goes before a thermometer read by hand.
 */
record ShelfAir(Map<String, Air> measured, Map<String, Air> set) {
    static final ShelfAir NONE = new ShelfAir(Map.of(), Map.of());

    static ShelfAir of(RoomView room, Instant at) {
        Map<String, Air> measured = new HashMap<>();
        Map<String, Air> set = new HashMap<>();
        for (BroodView brood : room.broods()) {
            BroodRecord record = brood.record();
            record.probeStays().stream()
                    .filter(stay -> stay.span().contains(at))
                    .forEach(stay -> last(room, record, stay.probe(), at)
                            .filter(reading -> reading.quality() == Quality.GOOD)
                            .ifPresent(
                                    reading -> measured.merge(stay.container(), air(stay, reading), ShelfAir::better)));
            record.setPoints().stream()
                    .filter(point -> point.span().contains(at))
                    .forEach(point -> set.put(
                            point.container(),
                            new Air(
                                    point.temperatureCelsius(),
                                    point.humidityPercent(),
                                    Optional.empty(),
                                    point.container())));
        }
        return new ShelfAir(measured, set);
    }

    /** The air of a container, or else of the nearest around it. */
    Optional<Air> in(Iterable<String> path) {
        return nearest(measured, path).or(() -> nearest(set, path));
    }

    private static Optional<Air> nearest(Map<String, Air> known, Iterable<String> path) {
        for (String container : path) {
            Air air = known.get(container);
            if (air != null) {
                return Optional.of(air);
            }
        }
        return Optional.empty();
    }

    private static Optional<Reading> last(RoomView room, BroodRecord record, String probe, Instant at) {
        if (at.equals(room.now())) {
            return Optional.ofNullable(room.latestReadings().get(probe));
        }
        ReadingSeries series =
                record.readings().getOrDefault(probe, ReadingSeries.EMPTY).until(at);
        return series.isEmpty() ? Optional.empty() : Optional.of(series.reading(series.size() - 1));
    }

    private static Air air(ProbeStay stay, Reading reading) {
        return new Air(
                stay.airCelsius(reading.temperatureCelsius()),
                reading.humidityPercent(),
                Optional.of(new Source(stay.probe(), reading.takenAt())),
                stay.container());
    }

    /** A wire goes before a hand, then what is later before what is earlier. */
    static Air better(Air one, Air other) {
        Source first = one.reading().orElseThrow();
        Source second = other.reading().orElseThrow();
        boolean firstIsByHand = HandReading.isByHand(first.probe());
        if (firstIsByHand != HandReading.isByHand(second.probe())) {
            return firstIsByHand ? other : one;
        }
        return first.takenAt().isBefore(second.takenAt()) ? other : one;
    }
}
