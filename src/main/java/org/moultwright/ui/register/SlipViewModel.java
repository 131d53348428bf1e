package org.moultwright.ui.register;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.domain.label.Paper;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.text.SlipWords;
import org.moultwright.workflow.HandOverSlip;
import org.moultwright.workflow.HandOverSlip.Lot;

/**
 * A hand-over slip for some pots: who to whom, on which day, and whether the pots are written down as handed over once it
 * is saved. Who gives stays as typed from slip to slip.
 */
final class SlipViewModel {
    private final RegisterDesk desk;
    private final RegisterViewModel register;
    private final StringProperty from = new SimpleStringProperty("");
    private final StringProperty to = new SimpleStringProperty("");
    private final ObjectProperty<@Nullable LocalDate> day = new SimpleObjectProperty<>(null);
    private final ObjectProperty<Paper> paper;
    private final BooleanProperty alsoHandsOver = new SimpleBooleanProperty(true);
    private final ReadOnlyStringWrapper contents = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper done = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private List<PotRow> pots = List.of();

    SlipViewModel(RegisterDesk desk, RegisterViewModel register) {
        this.paper = new SimpleObjectProperty<>(desk.paper());
        this.desk = desk;
        this.register = register;
    }

    StringProperty fromProperty() {
        return from;
    }

    StringProperty toProperty() {
        return to;
    }

    /** The day of the hand-over; none for today. */
    ObjectProperty<@Nullable LocalDate> dayProperty() {
        return day;
    }

    ObjectProperty<Paper> paperProperty() {
        return paper;
    }

    BooleanProperty alsoHandsOverProperty() {
        return alsoHandsOver;
    }

    /** What the slip lists, in words. */
    ReadOnlyStringProperty contentsProperty() {
        return contents.getReadOnlyProperty();
    }

    ReadOnlyStringProperty doneProperty() {
        return done.getReadOnlyProperty();
    }

    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** Begins a slip for these pots; those whose animal is dead are left off. */
    void begin(List<PotRow> concerned) {
        pots = concerned.stream().filter(row -> row.state() != PotState.DEAD).toList();
        to.set("");
        day.set(null);
        done.set("");
        int dead = concerned.size() - pots.size();
        problem.set(
                pots.isEmpty()
                        ? Texts.say("No pot with a living animal is chosen, so there is nothing to hand over.")
                        : "");
        alsoHandsOver.set(pots.stream().anyMatch(PotRow::isAlive));
        contents.set(lots().stream()
                        .map(lot ->
                                Texts.say("{0} of {1}: {2}", lot.what(), lot.taxon(), String.join(", ", lot.codes())))
                        .reduce((one, other) -> one + "\n" + other)
                        .orElse("")
                + (dead == 0 ? "" : "\n" + Texts.say("{0} left off, the animal dead.", RegisterWords.pots(dead))));
    }

    boolean isReady() {
        return !pots.isEmpty();
    }

    /** Asks where the slip goes, saves it, and then writes the hand-over down if it is to. */
    void save() {
        Instant at = at();
        if (pots.isEmpty()) {
            return;
        }
        if (at.isAfter(register.now()) && alsoHandsOver.get()) {
            problem.set(Texts.say("That day is yet to come. Save the slip alone, and write the hand-over down then."));
            return;
        }
        HandOverSlip slip = slip(at);
        Optional<Path> chosen =
                desk.chooseSlip().choose("hand-over-" + desk.days().date(at) + ".pdf");
        chosen.ifPresent(pdf -> desk.runner()
                .<Path>run(
                        progress -> {
                            desk.slips().save(slip, pdf);
                            return pdf;
                        },
                        outcome -> saved(outcome, at)));
    }

    private void saved(Outcome<Path> outcome, Instant at) {
        if (outcome instanceof Outcome.Done<Path> saved) {
            problem.set("");
            done.set(Texts.say("Slip saved: {0}.", saved.value().getFileName()));
            List<PotRow> alive = pots.stream().filter(PotRow::isAlive).toList();
            if (alsoHandsOver.get() && !alive.isEmpty()) {
                register.tend(
                        alive,
                        What.HANDED_OVER,
                        at,
                        lines(to.get()).stream()
                                .findFirst()
                                .map(who -> Texts.say("to {0}", who))
                                .orElse(""));
            }
        } else if (outcome instanceof Outcome.Failed<Path> failed) {
            done.set("");
            problem.set(String.valueOf(failed.fault().getMessage()));
        }
    }

    private HandOverSlip slip(Instant at) {
        return new HandOverSlip(
                paper.get(),
                SlipWords.TITLE,
                SlipWords.day(at, desk.days()),
                lines(from.get()),
                lines(to.get()),
                lots(),
                SlipWords.total(pots.size()),
                SlipWords.CAUTIONS,
                register.now());
    }

    /** One lot a brood and stage, in the order chosen. */
    private List<Lot> lots() {
        Map<List<String>, List<PotRow>> alike = new LinkedHashMap<>();
        pots.forEach(row -> alike.computeIfAbsent(List.of(row.broodCode(), stage(row)), none -> new ArrayList<>())
                .add(row));
        return alike.entrySet().stream()
                .map(lot -> new Lot(
                        lot.getValue().get(0).brood().taxon(),
                        RegisterWords.animals(lot.getValue().size()) + ", "
                                + lot.getKey().get(1) + ",",
                        SlipWords.origin(lot.getValue().get(0).brood(), desk.days()),
                        lot.getValue().stream().map(PotRow::code).toList()))
                .toList();
    }

    private String stage(PotRow row) {
        return RegisterWords.stage(row, desk.vocabulary().get());
    }

    private Instant at() {
        return register.writtenFor(day.get());
    }

    private static List<String> lines(String typed) {
        return typed.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }
}
