package org.moultwright.ui.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import org.moultwright.domain.ProbeStay;
import org.moultwright.language.Texts;
import org.moultwright.task.NewestQuestion;
import org.moultwright.task.Outcome;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceWindow;

/**
 * The trace of the chosen probe, and of those compared with it, over a stretch of time. What is drawn comes from
 * what was read before, at once; what is lacking is read aside and shown when it is there.
 */
final class TraceModel {
    private static final Duration SHORTEST_PAUSE = Duration.ofSeconds(2);
    private static final Duration FIRST_GUESS = Duration.ofDays(1);

    private final ClimateDesk desk;
    private final Supplier<ProbePlaces> places;
    private final NewestQuestion<TraceSource.Question, List<FetchedLine>> source;
    private final StringProperty chosen = new SimpleStringProperty("");
    private final ObservableList<String> compared = FXCollections.observableArrayList();
    private final ObjectProperty<TimeSpan> span = new SimpleObjectProperty<>(TimeSpan.WEEK);
    private final BooleanProperty held = new SimpleBooleanProperty();
    private final ReadOnlyObjectWrapper<Optional<Trace>> trace = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObjectProperty<Optional<Instant>> reading = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyStringWrapper readingWords = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper fault = new ReadOnlyStringWrapper("");
    private List<FetchedLine> fetched = List.of();
    private Optional<TraceWindow> window = Optional.empty();
    private Instant fetchedAt = Instant.MIN;

    /** @param places where the probes stand, as last read */
    TraceModel(ClimateDesk desk, Supplier<ProbePlaces> places) {
        this.desk = desk;
        this.places = places;
        this.source = new NewestQuestion<>(desk.runner(), new TraceSource(desk.log(), places)::read, this::fetched);
        chosen.addListener((observed, before, after) -> {
            compared.remove(after);
            fetch();
        });
        compared.addListener((ListChangeListener<String>) change -> fetch());
        span.addListener((observed, before, after) -> {
            if (after != TimeSpan.OWN) {
                fetch();
            }
        });
        held.addListener((observed, before, after) -> fetchNowAndThen());
        reading.addListener((observed, before, after) -> readInstant());
    }

    StringProperty chosenProperty() {
        return chosen;
    }

    /** Further probes laid over the chosen one's trace, at most {@link Trace#MOST_OTHERS}. */
    ObservableList<String> compared() {
        return compared;
    }

    ObjectProperty<TimeSpan> spanProperty() {
        return span;
    }

    /** Whether nothing shall move while the keeper reads. */
    BooleanProperty heldProperty() {
        return held;
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

    /** Shows another stretch, no later than now; what of it was not read yet is read aside. */
    void look(TraceWindow wanted) {
        TraceWindow shown = wanted.endingBy(desk.clock().instant());
        if (window.filter(shown::equals).isPresent()) {
            return;
        }
        span.set(TimeSpan.OWN);
        window = Optional.of(shown);
        show();
        boolean isRead = !fetched.isEmpty() && fetched.get(0).shows(shown);
        if (!isRead) {
            askAround(shown);
        }
    }

    /** Fetches anew where something new would be seen, and nobody holds it. */
    void fetchNowAndThen() {
        boolean isLive = !held.get() && span.get() != TimeSpan.OWN;
        if (isLive && Duration.between(fetchedAt, desk.clock().instant()).compareTo(pause()) >= 0) {
            fetch();
        }
    }

    /** Fetches the chosen stretch aside and shows it when it is there. */
    void fetch() {
        if (chosen.get().isEmpty()) {
            return;
        }
        Instant now = desk.clock().instant();
        fetchedAt = now;
        if (span.get() == TimeSpan.OWN) {
            askAround(window.orElse(new TraceWindow(now.minus(FIRST_GUESS), now)));
        } else {
            ask(new TraceWindow(span.get().length().map(now::minus).orElse(Instant.EPOCH), now), FetchedLine.PIXELS);
        }
    }

    private Duration pause() {
        Duration pixel = window.map(shown -> shown.length().dividedBy(FetchedLine.PIXELS))
                .orElse(Duration.ZERO);
        return pixel.compareTo(SHORTEST_PAUSE) > 0 ? pixel : SHORTEST_PAUSE;
    }

    /** As much again before and after it, for the next move of the hand. */
    private void askAround(TraceWindow shown) {
        Instant end = shown.to().plus(shown.length());
        Instant now = desk.clock().instant();
        TraceWindow around = new TraceWindow(shown.from().minus(shown.length()), end.isAfter(now) ? now : end);
        ask(
                around,
                (double) FetchedLine.PIXELS
                        * around.length().toMillis()
                        / shown.length().toMillis());
    }

    private void ask(TraceWindow wanted, double pixels) {
        List<String> probes = new ArrayList<>(List.of(chosen.get()));
        probes.addAll(compared);
        source.ask(new TraceSource.Question(probes, wanted, pixels));
    }

    private void fetched(Outcome<List<FetchedLine>> outcome) {
        if (outcome instanceof Outcome.Done<List<FetchedLine>> done) {
            if (!done.value().get(0).probe().equals(chosen.get())) {
                return;
            }
            fault.set("");
            fetched = done.value();
            if (span.get() != TimeSpan.OWN) {
                window = Optional.of(whole(fetched.get(0)));
            }
            show();
            reading.set(Optional.empty());
            readInstant();
        } else if (outcome instanceof Outcome.Failed<List<FetchedLine>> failed) {
            fault.set(Texts.say(
                    "The readings cannot be shown: {0}.", failed.fault().getMessage()));
        }
    }

    /** The stretch that was asked for; where that was all there is, from the first reading on. */
    private TraceWindow whole(FetchedLine line) {
        TraceWindow asked = line.window();
        if (span.get() != TimeSpan.ALL) {
            return asked;
        }
        Instant start = line.readings().readings().isEmpty()
                ? asked.to().minus(FIRST_GUESS)
                : Instant.ofEpochMilli(line.readings().readings().epochMillis(0));
        return new TraceWindow(start.isBefore(asked.to()) ? start : asked.to().minus(FIRST_GUESS), asked.to());
    }

    private void show() {
        if (window.isEmpty() || fetched.isEmpty()) {
            return;
        }
        TraceWindow shown = window.get();
        FetchedLine first = fetched.get(0);
        ProbePlaces standing = places.get();
        Optional<String> container = standing.stay(first.probe(), shown.to()).map(ProbeStay::container);
        trace.set(Optional.of(new Trace(
                desk.days().zone(),
                shown,
                first.line(),
                fetched.stream().skip(1).map(FetchedLine::line).toList(),
                TraceSource.target(standing, container, shown.to()),
                first.longestBridged(),
                first.excursions().stream()
                        .filter(stretch -> stretch.to().isAfter(shown.from())
                                && stretch.from().isBefore(shown.to()))
                        .toList(),
                container
                        .map(place -> standing.residents(place, shown.from(), shown.to()))
                        .orElse(List.of()),
                container
                        .map(place -> standing.remembered(place, shown.from(), shown.to()))
                        .orElse(List.of()))));
        String stretch = TraceWords.stretch(shown, desk.days());
        subtitle.set(container
                .map(place -> Texts.say("{0}, probe {1} · {2}", place, first.probe(), stretch))
                .orElseGet(() -> Texts.say("probe {0} · {1}", first.probe(), stretch)));
        readInstant();
    }

    private void readInstant() {
        readingWords.set(trace.get()
                .map(shown -> reading.get()
                        .map(instant -> TraceWords.at(shown, instant, desk.days()))
                        .orElseGet(() -> TraceWords.whole(shown)))
                .orElse(""));
    }
}
