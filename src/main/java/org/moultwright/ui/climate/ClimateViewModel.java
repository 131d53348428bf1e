package org.moultwright.ui.climate;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableStringValue;
import javafx.collections.ObservableList;
import org.moultwright.ui.chart.Trace;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.RoomView;

/** The probes, the one chosen among them, and its trace. */
final class ClimateViewModel {
    private final ClimateDesk desk;
    private final ProbeWires wires;
    private final ProbeBoard board;
    private final TraceModel trace;
    private final JournalModel journal;
    private final StringBinding problem;
    private ProbePlaces places;
    private boolean resumed;

    ClimateViewModel(ClimateDesk desk) {
        this.desk = desk;
        this.places = new ProbePlaces(desk.room().get());
        this.wires = new ProbeWires(desk, this::heard);
        this.board = new ProbeBoard(desk, wires);
        this.journal = new JournalModel(desk);
        this.trace = new TraceModel(desk, () -> places);
        this.problem = Bindings.createStringBinding(
                () -> trace.faultProperty().get().isEmpty()
                        ? board.silenceProperty().get()
                        : trace.faultProperty().get(),
                trace.faultProperty(),
                board.silenceProperty());
        desk.beside().addListener((observed, before, after) -> wires.show(after));
        desk.room().addListener((observed, before, after) -> read());
        chosenProperty().addListener((observed, before, after) -> age());
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

    ReadOnlyObjectProperty<Optional<Trace>> traceProperty() {
        return trace.traceProperty();
    }

    /** How wide the trace is shown, in pixels. */
    DoubleProperty pixelsProperty() {
        return trace.pixelsProperty();
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
        board.show(places, chosenProperty().get());
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
        }
    }

    private void heard() {
        age();
        trace.fetchNowAndThen();
    }
}
