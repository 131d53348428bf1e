package org.moultwright.ui.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.task.Outcome;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceChart;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.RoomView;

/** The probes, the one chosen among them, and its trace. */
final class ClimateViewModel {
    /** How far from the reference a box may be before it is worth a colour (our choice, no source). */
    private static final double BAND_CELSIUS = 1.0;

    private static final double ALARM_CELSIUS = 1.5;
    private static final Duration ALARM_AFTER = Duration.ofMinutes(30);
    private static final Duration LONGEST_BRIDGED = Duration.ofMinutes(30);
    private static final Duration FETCH_PAUSE = Duration.ofSeconds(2);

    private final ClimateDesk desk;
    private final ProbeWires wires;
    private final ObservableList<ProbeRow> probes = FXCollections.observableArrayList();
    private final StringProperty chosen = new SimpleStringProperty("");
    private final ObjectProperty<TimeSpan> span = new SimpleObjectProperty<>(TimeSpan.WEEK);
    private final ReadOnlyObjectWrapper<Optional<Trace>> trace = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObjectProperty<Optional<Instant>> reading = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyStringWrapper readingWords = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<ProbeNow> now = new ReadOnlyObjectWrapper<>(ProbeNow.NOTHING);
    private ProbePlaces places;
    private Instant fetchedAt = Instant.MIN;

    ClimateViewModel(ClimateDesk desk) {
        this.desk = desk;
        this.wires = new ProbeWires(desk, this::heard);
        this.places = new ProbePlaces(room());
        desk.room().addListener((observed, before, after) -> read());
        chosen.addListener((observed, before, after) -> fetch());
        span.addListener((observed, before, after) -> fetch());
        reading.addListener((observed, before, after) -> readInstant());
        read();
    }

    ObservableList<ProbeRow> probes() {
        return probes;
    }

    /** The code of the probe whose trace is shown; empty while there is none. */
    StringProperty chosenProperty() {
        return chosen;
    }

    ObjectProperty<TimeSpan> spanProperty() {
        return span;
    }

    ReadOnlyObjectProperty<Optional<Trace>> traceProperty() {
        return trace.getReadOnlyProperty();
    }

    /** The instant being read in the trace. */
    ObjectProperty<Optional<Instant>> readingProperty() {
        return reading;
    }

    ReadOnlyStringProperty readingWordsProperty() {
        return readingWords.getReadOnlyProperty();
    }

    ReadOnlyStringProperty subtitleProperty() {
        return subtitle.getReadOnlyProperty();
    }

    /** What keeps the trace from being shown, or which probe is silent; empty when all is well. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<ProbeNow> nowProperty() {
        return now.getReadOnlyProperty();
    }

    List<String> profiles() {
        return desk.links().profiles();
    }

    /** Starts listening to a probe; what comes is kept and shown as it comes. */
    void connect(String probe, String port, String profile) {
        wires.connect(probe, new ProbeLine(port, profile));
        chosen.set(probe);
    }

    void disconnect(String probe) {
        wires.stop(probe);
    }

    boolean isConnected(String probe) {
        return wires.isRunning(probe);
    }

    /** Says anew how old everything is; to be called now and then. */
    void age() {
        list();
    }

    private void read() {
        places = new ProbePlaces(room());
        list();
        if (chosen.get().isEmpty() && !probes.isEmpty()) {
            chosen.set(probes.get(0).probe());
        } else {
            fetch();
        }
    }

    private void heard() {
        list();
        if (Duration.between(fetchedAt, instant()).compareTo(FETCH_PAUSE) >= 0) {
            fetch();
        }
    }

    private void list() {
        Instant at = instant();
        Map<String, Reading> last = last();
        TreeSet<String> codes = new TreeSet<>(last.keySet());
        places.probes().forEach(codes::add);
        wires.probes().forEach(codes::add);
        List<ProbeRow> rows = codes.stream()
                .map(code -> ProbeRow.of(code, places, Optional.ofNullable(last.get(code)), wires.state(code), at))
                .toList();
        if (!rows.equals(probes)) {
            probes.setAll(rows);
        }
        showNow(Optional.ofNullable(last.get(chosen.get())), at);
    }

    private Map<String, Reading> last() {
        Map<String, Reading> last = new TreeMap<>(room().latestReadings());
        wires.heard()
                .forEach((probe, reading) -> last.merge(
                        probe, reading, (kept, heard) -> heard.takenAt().isBefore(kept.takenAt()) ? kept : heard));
        return last;
    }

    private void showNow(Optional<Reading> last, Instant at) {
        ProbeNow shown = last.map(reading -> ProbeNow.of(
                        reading,
                        places.correctedCelsius(chosen.get(), reading),
                        places.stay(chosen.get(), at).map(ProbeStay::sdCelsius),
                        Duration.between(reading.takenAt(), at)))
                .orElse(ProbeNow.NOTHING);
        now.set(shown);
        problem.set(last.filter(reading -> ProbeRow.isSilent(Duration.between(reading.takenAt(), at)))
                .map(reading -> silent(reading, at))
                .orElse(""));
    }

    private String silent(Reading last, Instant at) {
        Duration age = Duration.between(last.takenAt(), at);
        boolean isToday = desk.days().date(last.takenAt()).equals(desk.days().date(at));
        String when = isToday
                ? "at " + desk.days().clock(last.takenAt())
                : "on " + desk.days().day(last.takenAt()) + " at " + desk.days().clock(last.takenAt());
        return String.format(
                Locale.ROOT,
                "Probe %s has been silent for %s. Last reading %.1f °C %s. Check the plug.",
                chosen.get(),
                LongAge.of(age),
                places.correctedCelsius(chosen.get(), last),
                when);
    }

    /** Fetches the chosen probe's readings aside and shows them when they are there. */
    private void fetch() {
        String probe = chosen.get();
        if (probe.isEmpty()) {
            return;
        }
        fetchedAt = instant();
        Instant to = fetchedAt;
        Instant from = span.get().length().map(to::minus).orElse(Instant.EPOCH);
        desk.runner()
                .run(
                        progress -> places.corrected(probe, desk.log().series(probe, from, to.plusMillis(1))),
                        outcome -> fetched(probe, from, to, outcome));
    }

    private void fetched(String probe, Instant from, Instant to, Outcome<ReadingSeries> outcome) {
        if (!probe.equals(chosen.get())) {
            return;
        }
        if (outcome instanceof Outcome.Done<ReadingSeries> done) {
            show(probe, done.value(), from, to);
        } else if (outcome instanceof Outcome.Failed<ReadingSeries> failed) {
            problem.set("The readings cannot be shown: " + failed.fault().getMessage() + ".");
        }
        list();
    }

    private void show(String probe, ReadingSeries readings, Instant from, Instant to) {
        boolean hasOwnStart = span.get() == TimeSpan.ALL && !readings.isEmpty();
        Instant start = hasOwnStart ? Instant.ofEpochMilli(readings.epochMillis(0)) : from;
        Instant shownFrom = start.isBefore(to) && start.isAfter(Instant.EPOCH) ? start : to.minus(Duration.ofDays(1));
        Optional<String> container = places.stay(probe, to).map(ProbeStay::container);
        Optional<Double> reference = container.flatMap(place -> places.referenceCelsius(place, to));
        trace.set(Optional.of(new Trace(
                desk.days().zone(),
                shownFrom,
                to,
                readings,
                reference.map(celsius -> band(celsius, BAND_CELSIUS)),
                LONGEST_BRIDGED,
                reference
                        .map(celsius ->
                                Excursions.of(readings, band(celsius, ALARM_CELSIUS), ALARM_AFTER, LONGEST_BRIDGED))
                        .orElse(List.of()),
                container.map(place -> places.residents(place, shownFrom, to)).orElse(List.of()))));
        String place = container.map(code -> code + ", ").orElse("");
        subtitle.set("%sprobe %s · %s".formatted(place, probe, desk.days().days(shownFrom, to)));
        reading.set(Optional.empty());
        readInstant();
    }

    private static Trace.Band band(double middleCelsius, double halfWidthCelsius) {
        return new Trace.Band(middleCelsius - halfWidthCelsius, middleCelsius + halfWidthCelsius);
    }

    private void readInstant() {
        readingWords.set(trace.get().map(this::words).orElse(""));
    }

    private String words(Trace shown) {
        return reading.get()
                .map(instant -> desk.days().longDay(instant) + ", "
                        + desk.days().clock(instant) + ": "
                        + TraceChart.nearest(shown, instant)
                                .map(i -> String.format(
                                        Locale.ROOT, "%.1f °C", shown.readings().temperatureCelsius(i)))
                                .orElse("no reading"))
                .orElseGet(() -> TraceWords.whole(shown));
    }

    private Instant instant() {
        return desk.clock().instant();
    }

    private RoomView room() {
        return desk.room().get();
    }
}
