package org.moultwright.ui.climate;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableStringValue;
import javafx.beans.value.ObservableValue;
import javafx.collections.ObservableList;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.ColdestWall;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quantity;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceWindow;
import org.moultwright.ui.finder.FinderViewModel;
import org.moultwright.ui.instrument.CalibrationSubject;
import org.moultwright.ui.instrument.CalibrationViewModel;
import org.moultwright.ui.instrument.CalibrationWords;
import org.moultwright.ui.instrument.DisplayPlaces;
import org.moultwright.ui.instrument.DisplayViewModel;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.RoomView;

/** The probes, the one chosen among them, and its trace. */
final class ClimateViewModel {
    private final ClimateDesk desk;
    private final ProbeWires wires;
    private final ProbeBoard board;
    private final TraceModel trace;
    private final JournalModel journal;
    private final InstrumentsModel instruments;
    private final StringBinding problem;
    private final ObservableValue<String> heldWords;
    private ProbePlaces places;
    private boolean resumed;

    ClimateViewModel(ClimateDesk desk) {
        this.desk = desk;
        this.places = new ProbePlaces(desk.room().get());
        this.wires = new ProbeWires(desk, this::heard);
        this.instruments = new InstrumentsModel(desk, () -> places);
        this.board = new ProbeBoard(desk, wires, instruments);
        this.journal = new JournalModel(desk);
        this.trace = new TraceModel(desk, () -> places);
        this.problem = Bindings.createStringBinding(
                () -> trace.faultProperty().get().isEmpty()
                        ? board.silenceProperty().get()
                        : trace.faultProperty().get(),
                trace.faultProperty(),
                board.silenceProperty());
        this.heldWords = trace.heldProperty()
                .map(held -> held
                        ? Texts.say(
                                "Held at {0}: nothing moves while you read. Readings are kept and alarms go on.",
                                desk.days().clock(desk.clock().instant()))
                        : "");
        desk.beside().addListener((observed, before, after) -> wires.show(after));
        desk.room().addListener((observed, before, after) -> read());
        desk.walls().walls().addListener((observed, before, after) -> age());
        chosenProperty().addListener((observed, before, after) -> {
            age();
            instruments.fetch(after);
        });
        instruments.calibrationsProperty().addListener((observed, before, after) -> age());
        trace.heldProperty().addListener((observed, before, after) -> age());
        read();
    }

    ObservableList<ProbeRow> probes() {
        return board.rows();
    }

    /** What alarms there were lately, the newest first. */
    ObservableList<JournalRow> journal() {
        return journal.rows();
    }

    /** The code of the probe whose trace is shown; empty while there is none. */
    StringProperty chosenProperty() {
        return trace.chosenProperty();
    }

    ObjectProperty<TimeSpan> spanProperty() {
        return trace.spanProperty();
    }

    /** Whether nothing on screen shall move while the keeper reads. */
    BooleanProperty heldProperty() {
        return trace.heldProperty();
    }

    /** That it is held, in a sentence; empty while it is not. */
    ObservableValue<String> heldWordsProperty() {
        return heldWords;
    }

    /** Probes laid over the chosen one. */
    ObservableList<String> compared() {
        return trace.compared();
    }

    /** Shows another stretch of time. */
    void look(TraceWindow window) {
        trace.look(window);
    }

    ReadOnlyObjectProperty<Optional<Trace>> traceProperty() {
        return trace.traceProperty();
    }

    /** The instant being read in the trace. */
    ObjectProperty<Optional<Instant>> readingProperty() {
        return trace.readingProperty();
    }

    ReadOnlyStringProperty readingWordsProperty() {
        return trace.readingWordsProperty();
    }

    ReadOnlyStringProperty subtitleProperty() {
        return trace.subtitleProperty();
    }

    /** What keeps the trace from being shown, or which probe is silent; empty when all is well. */
    ObservableStringValue problemProperty() {
        return problem;
    }

    ReadOnlyObjectProperty<ProbeNow> nowProperty() {
        return board.nowProperty();
    }

    ReadOnlyObjectProperty<AirNow> airProperty() {
        return board.airProperty();
    }

    ReadOnlyObjectProperty<ProbeFacts> factsProperty() {
        return instruments.factsProperty();
    }

    /** How the chosen probe's calibrations stand: in temperature, then in humidity. */
    List<Standing> standing() {
        Instant now = desk.clock().instant();
        return Stream.of(Quantity.values())
                .map(quantity -> {
                    Optional<Calibration> inForce =
                            instruments.inForce(chosenProperty().get(), quantity, now);
                    String words = CalibrationWords.standing(inForce, now, desk.days());
                    return new Standing(
                            quantity == Quantity.TEMPERATURE
                                    ? Texts.say("Temperature: {0}", words)
                                    : Texts.say("Humidity: {0}", words),
                            inForce.filter(one -> one.isExpiredAt(now)).isPresent());
                })
                .toList();
    }

    /** How the calibration of one quantity stands. */
    record Standing(String words, boolean isExpired) {}

    ReadOnlyObjectProperty<List<Calibration>> calibrationsProperty() {
        return instruments.calibrationsProperty();
    }

    /** The form in which the chosen probe is calibrated. */
    CalibrationViewModel calibrating(Runnable close) {
        String probe = chosenProperty().get();
        return new CalibrationViewModel(
                desk.instruments(),
                new CalibrationSubject(
                        probe,
                        instruments.calibrationsProperty().get(),
                        places.otherwise(probe),
                        () -> board.lastOf(probe)),
                close);
    }

    /** The form in which a display is held against a probe. */
    DisplayViewModel comparingDisplays(Runnable close) {
        return new DisplayViewModel(
                desk.instruments(),
                new DisplayPlaces(
                        places.probeStays(), places.shelf(), desk.clock().instant()),
                close);
    }

    /** The page on which it is found out how an unknown probe speaks. */
    FinderViewModel finding(BiConsumer<String, String> connect, Runnable close) {
        return new FinderViewModel(desk.finding(), connect, close);
    }

    /** The container the chosen probe stands in, if that is written down. */
    Optional<String> container() {
        return places.stay(chosenProperty().get(), desk.clock().instant()).map(ProbeStay::container);
    }

    Optional<ColdestWall> wall() {
        return container().flatMap(desk.walls()::of);
    }

    /** Keeps what the keeper says of the wall where the chosen probe stands. */
    void say(Optional<ColdestWall> wall) {
        container().ifPresent(container -> desk.walls().note().accept(container, wall));
    }

    /** Prints a picture of the trace; what came of it, in a sentence. */
    String print() {
        return traceProperty()
                .get()
                .map(shown -> desk.paper().print(subtitleProperty().get(), shown))
                .orElse("");
    }

    /** Saves a picture of the trace as PDF; what came of it is told in a sentence. */
    void save(Consumer<String> tell) {
        traceProperty()
                .get()
                .flatMap(shown -> desk.paper()
                        .toSave(subtitleProperty().get(), shown, desk.clock().instant()))
                .ifPresent(saving -> desk.runner().<String>run(progress -> saving.get(), outcome -> {
                    if (outcome instanceof Outcome.Done<String> done) {
                        tell.accept(done.value());
                    } else if (outcome instanceof Outcome.Failed<String> failed) {
                        tell.accept(String.valueOf(failed.fault().getMessage()));
                    }
                }));
    }

    List<String> profiles() {
        return desk.links().profiles();
    }

    /** Starts listening to a probe; what comes is kept and shown as it comes. */
    void connect(String probe, String port, String profile) {
        wires.connect(probe, new ProbeLine(port, profile));
        chosenProperty().set(probe);
    }

    void disconnect(String probe) {
        wires.stop(probe);
    }

    boolean isConnected(String probe) {
        return wires.isRunning(probe);
    }

    /** Says anew how old everything is; to be called now and then. */
    void age() {
        if (!heldProperty().get()) {
            board.show(places, chosenProperty().get());
        }
    }

    /** Stops listening to every probe, as the desk closes. */
    void close() {
        wires.close();
    }

    private void read() {
        places = new ProbePlaces(desk.room().get());
        if (!resumed && !desk.room().get().equals(RoomView.EMPTY)) {
            // Not before it is known where probes stand: the watch names its places by that.
            resumed = true;
            wires.resume();
        }
        age();
        if (chosenProperty().get().isEmpty() && !probes().isEmpty()) {
            chosenProperty().set(probes().get(0).probe());
        } else {
            trace.fetch();
            instruments.fetch(chosenProperty().get());
        }
    }

    private void heard() {
        age();
        trace.fetchNowAndThen();
    }
}
