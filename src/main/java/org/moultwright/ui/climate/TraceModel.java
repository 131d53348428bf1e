package org.moultwright.ui.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.RollUpLevel;
import org.moultwright.task.Outcome;
import org.moultwright.ui.chart.Trace;
import org.moultwright.workflow.TraceReadings;

/** The trace of the chosen probe over the chosen span: fetched aside, shown when it is there, read by instants. */
final class TraceModel {
    /** How far from the reference a box may be before it is worth a colour (our choice, no source). */
    private static final double BAND_CELSIUS = 1.0;

    private static final double ALARM_CELSIUS = 1.5;
    private static final Duration ALARM_AFTER = Duration.ofMinutes(30);
    private static final Duration LONGEST_BRIDGED = Duration.ofMinutes(30);
    private static final Duration FETCH_PAUSE = Duration.ofSeconds(2);

    /** Before it is known how wide the trace is shown. */
    private static final double USUAL_PIXELS = 1600;

    private final ClimateDesk desk;
    private final Supplier<ProbePlaces> places;
    private final StringProperty chosen = new SimpleStringProperty("");
    private final ObjectProperty<TimeSpan> span = new SimpleObjectProperty<>(TimeSpan.WEEK);
    private final ReadOnlyObjectWrapper<Optional<Trace>> trace = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final DoubleProperty pixels = new SimpleDoubleProperty(USUAL_PIXELS);
    private final ObjectProperty<Optional<Instant>> reading = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyStringWrapper readingWords = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper fault = new ReadOnlyStringWrapper("");
    private Instant fetchedAt = Instant.MIN;

    /** @param places where the probes stand, as last read */
    TraceModel(ClimateDesk desk, Supplier<ProbePlaces> places) {
        this.desk = desk;
        this.places = places;
        chosen.addListener((observed, before, after) -> fetch());
        span.addListener((observed, before, after) -> fetch());
        pixels.addListener((observed, before, after) -> widened(before.doubleValue(), after.doubleValue()));
        reading.addListener((observed, before, after) -> readInstant());
    }

    StringProperty chosenProperty() {
        return chosen;
    }

    ObjectProperty<TimeSpan> spanProperty() {
        return span;
    }

    /** How wide the trace is shown, which says how fine it must be. */
    DoubleProperty pixelsProperty() {
        return pixels;
    }

    ReadOnlyObjectProperty<Optional<Trace>> traceProperty() {
        return trace.getReadOnlyProperty();
    }

    ObjectProperty<Optional<Instant>> readingProperty() {
        return reading;
    }

    ReadOnlyStringProperty readingWordsProperty() {
        return readingWords.getReadOnlyProperty();
    }

    ReadOnlyStringProperty subtitleProperty() {
        return subtitle.getReadOnlyProperty();
    }

    /** Why the readings cannot be shown, in a sentence; empty while they can. */
    ReadOnlyStringProperty faultProperty() {
        return fault.getReadOnlyProperty();
    }

    /** Fetches anew unless that was done a moment ago. */
    void fetchNowAndThen() {
        if (Duration.between(fetchedAt, desk.clock().instant()).compareTo(FETCH_PAUSE) >= 0) {
            fetch();
        }
    }

    /** A wider chart may show more than what was fetched for a narrower one; a narrower one never does. */
    private void widened(double before, double after) {
        boolean isFinerSeen = trace.get()
                .map(shown -> Duration.between(shown.from(), shown.to()))
                .filter(length -> !RollUpLevel.coarsest(length, before).equals(RollUpLevel.coarsest(length, after)))
                .isPresent();
        if (after > before && isFinerSeen) {
            fetch();
        }
    }

    /** Fetches the chosen probe's readings aside and shows them when they are there. */
    void fetch() {
        String probe = chosen.get();
        if (probe.isEmpty()) {
            return;
        }
        fetchedAt = desk.clock().instant();
        Instant to = fetchedAt;
        TimeSpan wanted = span.get();
        double width = pixels.get();
        ProbePlaces standing = places.get();
        desk.runner()
                .run(
                        progress -> {
                            TraceReadings read = TraceReadings.of(desk.log(), probe, wanted.length(), to, width);
                            return new TraceReadings(read.from(), to, standing.corrected(probe, read.rollUps()));
                        },
                        outcome -> fetched(probe, outcome));
    }

    private void fetched(String probe, Outcome<TraceReadings> outcome) {
        if (!probe.equals(chosen.get())) {
            return;
        }
        if (outcome instanceof Outcome.Done<TraceReadings> done) {
            fault.set("");
            show(probe, done.value());
        } else if (outcome instanceof Outcome.Failed<TraceReadings> failed) {
            fault.set("The readings cannot be shown: " + failed.fault().getMessage() + ".");
        }
    }

    private void show(String probe, TraceReadings read) {
        Instant from = read.from();
        Instant to = read.to();
        Optional<String> container = places.get().stay(probe, to).map(ProbeStay::container);
        Optional<Double> reference = container.flatMap(place -> places.get().referenceCelsius(place, to));
        trace.set(Optional.of(new Trace(
                desk.days().zone(),
                from,
                to,
                read.rollUps(),
                reference.map(celsius -> band(celsius, BAND_CELSIUS)),
                LONGEST_BRIDGED,
                reference
                        .map(celsius -> Excursions.of(
                                read.rollUps(), band(celsius, ALARM_CELSIUS), ALARM_AFTER, LONGEST_BRIDGED))
                        .orElse(List.of()),
                container.map(place -> places.get().residents(place, from, to)).orElse(List.of()))));
        String place = container.map(code -> code + ", ").orElse("");
        subtitle.set("%sprobe %s · %s".formatted(place, probe, desk.days().days(from, to)));
        reading.set(Optional.empty());
        readInstant();
    }

    private static Trace.Band band(double middleCelsius, double halfWidthCelsius) {
        return new Trace.Band(middleCelsius - halfWidthCelsius, middleCelsius + halfWidthCelsius);
    }

    private void readInstant() {
        readingWords.set(trace.get()
                .map(shown -> reading.get()
                        .map(instant -> TraceWords.at(shown, instant, desk.days()))
                        .orElseGet(() -> TraceWords.whole(shown)))
                .orElse(""));
    }
}
