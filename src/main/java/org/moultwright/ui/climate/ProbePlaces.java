package org.moultwright.ui.climate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Correction;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Reading;
import org.moultwright.domain.RollUp;
import org.moultwright.domain.Shelf;
import org.moultwright.domain.Stay;
import org.moultwright.language.Texts;
import org.moultwright.ui.chart.Trace;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

/** Where probes measured, how far off they read, and which trays stood there. */
final class ProbePlaces {
    private final List<ProbeStay> probeStays;
    private final List<Stay> trayStays;
    private final Shelf shelf;
    private final RoomView room;

    ProbePlaces(RoomView room) {
        this.room = room;
        this.probeStays = room.broods().stream()
                .flatMap(brood -> brood.record().probeStays().stream())
                .distinct()
                .toList();
        List<Stay> stays = room.broods().stream()
                .flatMap(brood -> brood.record().stays().stream())
                .distinct()
                .toList();
        this.shelf = new Shelf(stays);
        this.trayStays = stays.stream()
                .filter(stay -> stay.kind() == ContainerKind.TRAY || stay.kind() == ContainerKind.HAMMOCK)
                .toList();
    }

    /** Every probe a brood knows of. */
    Stream<String> probes() {
        return probeStays.stream().map(ProbeStay::probe).distinct();
    }

    /** Where and when every probe stood. */
    List<ProbeStay> probeStays() {
        return probeStays;
    }

    Shelf shelf() {
        return shelf;
    }

    /** What a probe's indications need where no calibration applies, as it was written beside a stay. */
    Correction otherwise(String probe) {
        return probeStays.stream()
                .filter(stay ->
                        stay.probe().equals(probe) && stay.calibratedAt().isEmpty())
                .map(ProbeStay::correction)
                .findFirst()
                .orElse(Correction.constant(0, 0));
    }

    Optional<ProbeStay> stay(String probe, Instant at) {
        return probeStays.stream()
                .filter(stay -> stay.probe().equals(probe) && stay.span().contains(at))
                .findFirst();
    }

    /** A reading less what its probe was known to read too high at that time. */
    double correctedCelsius(String probe, Reading reading) {
        double indicated = reading.temperatureCelsius();
        return stay(probe, reading.takenAt())
                .map(stay -> stay.airCelsius(indicated))
                .orElse(indicated);
    }

    /** Roll-ups less what their probe was known to read too high when each began. */
    List<RollUp> corrected(String probe, List<RollUp> raw) {
        List<ProbeStay> ofProbe =
                probeStays.stream().filter(stay -> stay.probe().equals(probe)).toList();
        if (ofProbe.stream().allMatch(stay -> stay.correction().isNothing())) {
            return raw;
        }
        return raw.stream()
                .map(rollUp -> stay(probe, Instant.ofEpochMilli(rollUp.firstMillis()))
                        .map(stay -> rollUp.corrected(stay.correction()))
                        .orElse(rollUp))
                .toList();
    }

    /** What thermometers that remember told of a container in a stretch of time. */
    List<Trace.Remembered> remembered(String container, Instant from, Instant to) {
        return room.broods().stream()
                .flatMap(brood -> brood.record().extremes().stream())
                .filter(known -> known.container().equals(container)
                        && known.from().isBefore(to)
                        && known.to().isAfter(from))
                .distinct()
                .map(known ->
                        new Trace.Remembered(known.from(), known.to(), known.lowestCelsius(), known.highestCelsius()))
                .toList();
    }

    /** The trays that stood inside a container, in stretches of the same company. */
    List<Trace.Stretch> residents(String container, Instant from, Instant to) {
        TreeSet<Instant> turns = new TreeSet<>(List.of(from, to));
        trayStays.forEach(stay -> {
            turns.add(stay.span().from());
            stay.span().to().ifPresent(turns::add);
        });
        List<Trace.Stretch> stretches = new ArrayList<>();
        for (Instant turn : turns.subSet(from, true, to, false)) {
            Instant end = turns.higher(turn);
            String company = company(container, turn);
            if (end == null || company.isEmpty()) {
                continue;
            }
            int last = stretches.size() - 1;
            boolean goesOn = last >= 0
                    && stretches.get(last).to().equals(turn)
                    && stretches.get(last).words().equals(company);
            if (goesOn) {
                stretches.set(last, new Trace.Stretch(stretches.get(last).from(), end, company));
            } else {
                stretches.add(new Trace.Stretch(turn, end, company));
            }
        }
        return stretches;
    }

    /** The temperature the broods in a container are kept for: the mean of their reference temperatures. */
    Optional<Double> referenceCelsius(String container, Instant at) {
        double[] references = room.broods().stream()
                .filter(brood -> livesIn(brood, container, at))
                .mapToDouble(brood -> brood.record().brood().referenceTemperatureCelsius())
                .toArray();
        return references.length == 0
                ? Optional.empty()
                : Optional.of(Arrays.stream(references).average().orElseThrow());
    }

    private boolean livesIn(BroodView brood, String container, Instant at) {
        return brood.trays().stream()
                .anyMatch(tray -> shelf.pathOf(tray.tray(), at).contains(container));
    }

    private String company(String container, Instant at) {
        List<String> trays = trayStays.stream()
                .filter(stay -> stay.span().contains(at))
                .map(Stay::container)
                .filter(tray -> shelf.pathOf(tray, at).contains(container))
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
        return trays.isEmpty() ? "" : Texts.say("{0} lived here", String.join(", ", trays));
    }
}
