package org.moultwright.ui.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.compute.psychro.MeasuredAir;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.ColdestWall;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Quantity;
import org.moultwright.domain.Reading;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;

/** All probes with their last reading, and the chosen one's in large. */
final class ProbeBoard {
    private final ClimateDesk desk;
    private final ProbeWires wires;
    private final InstrumentsModel instruments;
    private final ObservableList<ProbeRow> rows = FXCollections.observableArrayList();
    private final ReadOnlyObjectWrapper<ProbeNow> now = new ReadOnlyObjectWrapper<>(ProbeNow.NOTHING);
    private final ReadOnlyObjectWrapper<AirNow> air = new ReadOnlyObjectWrapper<>(AirNow.NOTHING);
    private final ReadOnlyStringWrapper silence = new ReadOnlyStringWrapper("");

    ProbeBoard(ClimateDesk desk, ProbeWires wires, InstrumentsModel instruments) {
        this.desk = desk;
        this.wires = wires;
        this.instruments = instruments;
    }

    ObservableList<ProbeRow> rows() {
        return rows;
    }

    ReadOnlyObjectProperty<ProbeNow> nowProperty() {
        return now.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<AirNow> airProperty() {
        return air.getReadOnlyProperty();
    }

    /** The last reading of a probe, raw. */
    Optional<Reading> lastOf(String probe) {
        return Optional.ofNullable(last().get(probe));
    }

    /** That the chosen probe is silent, in a sentence; empty while it is heard. */
    ReadOnlyStringProperty silenceProperty() {
        return silence.getReadOnlyProperty();
    }

    /** Shows all probes as they stand now. */
    void show(ProbePlaces places, String chosen) {
        Instant at = desk.clock().instant();
        Map<String, Reading> last = last();
        TreeSet<String> codes = new TreeSet<>(last.keySet());
        places.probes().forEach(codes::add);
        wires.probes().forEach(codes::add);
        List<ProbeRow> shown = codes.stream()
                .map(code -> ProbeRow.of(code, places, Optional.ofNullable(last.get(code)), wires.state(code), at))
                .toList();
        if (!shown.equals(rows)) {
            rows.setAll(shown);
        }
        Optional<Reading> reading = Optional.ofNullable(last.get(chosen));
        now.set(reading.map(latest -> ProbeNow.of(
                        latest,
                        places.correctedCelsius(chosen, latest),
                        places.stay(chosen, at).map(ProbeStay::sdCelsius),
                        Duration.between(latest.takenAt(), at)))
                .orElse(ProbeNow.NOTHING));
        air.set(reading.flatMap(latest -> sample(places, chosen, latest))
                .map(sample -> AirNow.of(sample, said(places, chosen, at), onWall(places, chosen, last, at)))
                .orElse(AirNow.NOTHING));
        silence.set(reading.filter(latest -> !HandReading.isByHand(chosen))
                .filter(latest -> ProbeRow.isSilent(Duration.between(latest.takenAt(), at)))
                .map(latest -> silent(chosen, latest.takenAt(), places.correctedCelsius(chosen, latest), at))
                .orElse(""));
    }

    private Optional<MeasuredAir> sample(ProbePlaces places, String probe, Reading reading) {
        return reading.quality() == Quality.FAULT
                ? Optional.empty()
                : MeasuredAir.of(
                        places.correctedCelsius(probe, reading),
                        sd(places, probe, reading.takenAt()),
                        reading.humidityPercent(),
                        instruments
                                .inForce(probe, Quantity.HUMIDITY, reading.takenAt())
                                .map(Calibration::correction));
    }

    private Optional<ColdestWall> said(ProbePlaces places, String probe, Instant at) {
        return places.stay(probe, at).flatMap(stay -> desk.walls().of(stay.container()));
    }

    private Optional<MeasuredAir.Wall> onWall(ProbePlaces places, String probe, Map<String, Reading> last, Instant at) {
        return said(places, probe, at)
                .flatMap(ColdestWall::probe)
                .flatMap(onWall -> Optional.ofNullable(last.get(onWall))
                        .filter(reading -> reading.quality() == Quality.GOOD
                                && !ProbeRow.isSilent(Duration.between(reading.takenAt(), at)))
                        .map(reading -> new MeasuredAir.Wall(
                                places.correctedCelsius(onWall, reading), sd(places, onWall, at))));
    }

    private static double sd(ProbePlaces places, String probe, Instant at) {
        return places.stay(probe, at).map(ProbeStay::sdCelsius).orElse(MeasuredAir.UNTRIED_SD_CELSIUS);
    }

    private Map<String, Reading> last() {
        Map<String, Reading> last = new TreeMap<>(desk.room().get().latestReadings());
        wires.heard()
                .forEach((probe, reading) -> last.merge(
                        probe, reading, (kept, heard) -> heard.takenAt().isBefore(kept.takenAt()) ? kept : heard));
        return last;
    }

    private String silent(String probe, Instant last, double celsius, Instant at) {
        boolean isToday = desk.days().date(last).equals(desk.days().date(at));
        String when = isToday
                ? Texts.say("at {0}", desk.days().clock(last))
                : Texts.say("on {0} at {1}", desk.days().day(last), desk.days().clock(last));
        return Texts.say(
                "Probe {0} has been silent for {1}. Last reading {2} {3}. Check the plug.",
                probe, LongAge.of(Duration.between(last, at)), Degrees.words(celsius, 1), when);
    }
}
