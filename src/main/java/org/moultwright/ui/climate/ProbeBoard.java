package org.moultwright.ui.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
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
import org.moultwright.domain.HandReading;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Reading;

/** All probes with their last reading, and the chosen one's in large. */
final class ProbeBoard {
    private final ClimateDesk desk;
    private final ProbeWires wires;
    private final ObservableList<ProbeRow> rows = FXCollections.observableArrayList();
    private final ReadOnlyObjectWrapper<ProbeNow> now = new ReadOnlyObjectWrapper<>(ProbeNow.NOTHING);
    private final ReadOnlyStringWrapper silence = new ReadOnlyStringWrapper("");

    ProbeBoard(ClimateDesk desk, ProbeWires wires) {
        this.desk = desk;
        this.wires = wires;
    }

    ObservableList<ProbeRow> rows() {
        return rows;
    }

    ReadOnlyObjectProperty<ProbeNow> nowProperty() {
        return now.getReadOnlyProperty();
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
        silence.set(reading.filter(latest -> !HandReading.isByHand(chosen))
                .filter(latest -> ProbeRow.isSilent(Duration.between(latest.takenAt(), at)))
                .map(latest -> silent(chosen, latest.takenAt(), places.correctedCelsius(chosen, latest), at))
                .orElse(""));
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
                ? "at " + desk.days().clock(last)
                : "on " + desk.days().day(last) + " at " + desk.days().clock(last);
        return String.format(
                Locale.ROOT,
                "Probe %s has been silent for %s. Last reading %.1f °C %s. Check the plug.",
                probe,
                LongAge.of(Duration.between(last, at)),
                celsius,
                when);
    }
}
