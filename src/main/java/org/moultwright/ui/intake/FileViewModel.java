package org.moultwright.ui.intake;

import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.language.Texts;
import org.moultwright.task.Job;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.ColumnMeaning;
import org.moultwright.workflow.DateOrder;
import org.moultwright.workflow.ReadingFiles.Row;
import org.moultwright.workflow.ReadingMapping;
import org.moultwright.workflow.TakeInReadings;

/** A file of readings on its way in: how it is understood, then how far it is, then what came of it. */
final class FileViewModel {
    private static final int SHOWN_ROWS = 12;

    private final IntakeDesk desk;
    private final Path file;
    private final EntryModel entry;
    private final StringProperty probe = new SimpleStringProperty("");
    private final StringProperty zone = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Optional<Understood>> understood =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(new Mapping());
    private final ReadOnlyStringWrapper progress = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Double> share = new ReadOnlyObjectWrapper<>(0.0);
    private Optional<Job> running = Optional.empty();

    FileViewModel(IntakeDesk desk, Path file) {
        this.desk = desk;
        this.file = file;
        this.entry = new EntryModel(desk);
        zone.set(desk.days().zone().getId());
        look(() -> desk.files().propose(file, desk.days().zone()));
        zone.addListener((observed, before, now) -> zoneNamed(now).ifPresent(this::read));
    }

    String fileName() {
        return String.valueOf(file.getFileName());
    }

    EntryModel entry() {
        return entry;
    }

    /** The code its readings are to stand under. */
    StringProperty probeProperty() {
        return probe;
    }

    /** The zone of the file's clock, by its name. */
    StringProperty zoneProperty() {
        return zone;
    }

    /** How the file is understood so far; empty until it has been looked at. */
    ReadOnlyObjectProperty<Optional<Understood>> understoodProperty() {
        return understood.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    ReadOnlyStringProperty progressProperty() {
        return progress.getReadOnlyProperty();
    }

    /** How much of the file was read, within [0, 1]. */
    ReadOnlyObjectProperty<Double> shareProperty() {
        return share.getReadOnlyProperty();
    }

    void mean(int column, ColumnMeaning meaning) {
        change(mapping -> mapping.with(column, meaning));
    }

    void order(DateOrder order) {
        change(mapping -> mapping.withDates(order));
    }

    void skip(int rows) {
        change(mapping -> mapping.withRowsBefore(rows));
    }

    /** Looks at the file anew, as text of another kind or between other delimiters. */
    void readAs(Charset charset, char delimiter) {
        look(() -> desk.files()
                .propose(file, zoneNamed(zone.get()).orElse(desk.days().zone()), charset, delimiter));
    }

    void takeIn() {
        Optional<Understood> now = understood.get();
        Optional<String> missing = now.flatMap(known -> known.mapping().missing());
        if (now.isEmpty()) {
            entry.refuse(Texts.say("The file is still being looked at."));
        } else if (missing.isPresent()) {
            entry.refuse(missing.get());
        } else if (zoneNamed(zone.get()).isEmpty()) {
            entry.refuse(Texts.say("Type the zone of the file's clock as in Europe/Lisbon, or UTC."));
        } else if (probe.get().isBlank()) {
            entry.refuse(Texts.say("Give the probe a code of your choice, such as P-3."));
        } else if (entry.containerProperty().get().isEmpty()) {
            entry.refuse(Texts.say("There is no container yet. Write down where a tray stands first."));
        } else {
            run(now.get().mapping());
        }
    }

    /** Asks the running one to stop; nothing of it is kept. */
    void cancel() {
        running.ifPresent(Job::cancel);
    }

    /** Goes back to how the file is understood. */
    void mapAgain() {
        state.set(new Mapping());
    }

    private void run(ReadingMapping mapping) {
        String code = probe.get().strip();
        String container = entry.containerProperty().get();
        progress.set(Texts.say("Reading {0}", fileName()));
        share.set(0.0);
        state.set(new Running());
        running = Optional.of(desk.intake()
                .<TakeInReadings.Result>run(
                        work -> desk.takeIn().takeIn(file, mapping, code, container, work),
                        (done, words) -> {
                            share.set(done);
                            progress.set(words);
                        },
                        outcome -> ended(code, container, outcome)));
    }

    private void ended(String code, String container, Outcome<TakeInReadings.Result> outcome) {
        if (outcome instanceof Outcome.Done<TakeInReadings.Result> done) {
            state.set(new Ended(
                    true,
                    FileWords.takenIn(code, container, done.value()),
                    done.value().listed()));
            desk.readAgain().run();
        } else if (outcome instanceof Outcome.Failed<TakeInReadings.Result> failed) {
            state.set(new Ended(
                    false,
                    FileWords.failed(failed.fault()),
                    failed.fault() instanceof TakeInReadings.NotUnderstood thin ? thin.listed() : List.of()));
        } else {
            entry.refuse(Texts.say("Stopped. Nothing of {0} was taken in.", fileName()));
            mapAgain();
        }
    }

    private void read(ZoneId other) {
        change(mapping -> mapping.withZone(other));
    }

    private void change(UnaryOperator<ReadingMapping> changing) {
        understood.get().ifPresent(known -> {
            ReadingMapping changed = changing.apply(known.mapping());
            if (!changed.equals(known.mapping())) {
                look(() -> changed);
            }
        });
    }

    /** A preview costs some thousandths of a second, so that the next key finds it. */
    private void look(Supplier<ReadingMapping> asked) {
        desk.keeper()
                .<Understood>run(
                        progressing -> {
                            ReadingMapping mapping = asked.get();
                            return new Understood(
                                    mapping, desk.files().first(file, mapping, mapping.rowsBefore() + SHOWN_ROWS));
                        },
                        outcome -> {
                            if (outcome instanceof Outcome.Done<Understood> done) {
                                entry.refuse("");
                                understood.set(Optional.of(done.value()));
                            } else if (outcome instanceof Outcome.Failed<Understood> failed) {
                                entry.refuse(FileWords.failed(failed.fault()));
                            }
                        });
    }

    private static Optional<ZoneId> zoneNamed(String name) {
        try {
            return Optional.of(ZoneId.of(name.strip()));
        } catch (DateTimeException unknown) {
            return Optional.empty();
        }
    }

    /**
     * How a file is understood.
     *
     * @param rows its first rows
     */
    record Understood(ReadingMapping mapping, List<Row> rows) {
        Understood {
            rows = List.copyOf(rows);
        }
    }

    /** How far a file is on its way in. */
    sealed interface State {}

    /** Its columns are being given a meaning. */
    record Mapping() implements State {}

    record Running() implements State {}

    /**
     * It is in, or nothing of it.
     *
     * @param listed rows that mean no reading
     */
    record Ended(boolean isTakenIn, String sentence, List<Row> listed) implements State {
        Ended {
            listed = List.copyOf(listed);
        }
    }
}
