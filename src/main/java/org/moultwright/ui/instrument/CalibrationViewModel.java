package org.moultwright.ui.instrument;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.compute.calibration.Redressing;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.Quantity;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.task.NewestQuestion;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.Deed;

/** A calibration being written: its points, what they come to, and what keeping it would change. */
public final class CalibrationViewModel {
    private final InstrumentDesk desk;
    private final CalibrationSubject subject;
    private final Runnable close;
    private final CalibrationForm form = new CalibrationForm();
    private final ReadOnlyObjectWrapper<Optional<Calibration>> draft = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper missing = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper redressed = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final NewestQuestion<Calibration, Change> changes;

    /** @param close leaves the page */
    public CalibrationViewModel(InstrumentDesk desk, CalibrationSubject subject, Runnable close) {
        this.desk = desk;
        this.subject = subject;
        this.close = close;
        this.changes = new NewestQuestion<>(
                desk.runner(),
                asked -> new Change(asked, desk.calibrations().changes(asked, subject.otherwise())),
                this::changeFound);
        form.whenChanged(this::fit);
        fit();
    }

    String probe() {
        return subject.probe();
    }

    CalibrationForm form() {
        return form;
    }

    /** What the points come to, once they come to something. */
    ReadOnlyObjectProperty<Optional<Calibration>> draftProperty() {
        return draft.getReadOnlyProperty();
    }

    /** What is still to be written; empty once there is a draft. */
    ReadOnlyStringProperty missingProperty() {
        return missing.getReadOnlyProperty();
    }

    /** How many past readings change. */
    ReadOnlyStringProperty redressedProperty() {
        return redressed.getReadOnlyProperty();
    }

    /** Why it could not be kept; empty when nothing stands in the way. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** Writes what the probe said last into a point; does nothing where it said nothing. */
    void takeReading(PointEntry point) {
        lastValue().ifPresent(value -> point.indicated().textProperty().set(Numbers.fixed(value, 2)));
    }

    /** What the probe said last and when, for the button that takes it; empty where it said nothing. */
    String lastReading() {
        return subject.last()
                .get()
                .flatMap(reading -> lastValue()
                        .map(value -> Texts.say(
                                "{0} {1} at {2}",
                                Numbers.fixed(value, 2),
                                CalibrationWords.unit(form.quantityProperty().get()),
                                desk.days().clock(reading.takenAt()))))
                .orElse("");
    }

    /** What was found out about this probe before, the latest first. */
    List<String> history() {
        List<Calibration> ofProbe = new ArrayList<>(subject.known().stream()
                .filter(one -> one.probe().equals(subject.probe()))
                .toList());
        Collections.reverse(ofProbe);
        Instant now = desk.clock().instant();
        return ofProbe.stream()
                .map(one -> CalibrationWords.history(one, now, desk.days()))
                .toList();
    }

    String superseded() {
        return draft.get()
                .map(one -> Texts.say(
                        "{0} To be done again by {1}.",
                        CalibrationWords.superseded(one, subject.known(), desk.days()),
                        CalibrationWords.date(one.expiresAt(), desk.days())))
                .orElse("");
    }

    void cancel() {
        close.run();
    }

    /** Keeps the draft; the page closes once it is on disk. */
    void keep() {
        draft.get()
                .ifPresent(kept -> desk.runner()
                        .<Deed.Summary>run(progress -> desk.calibrations().save(kept), this::keptOrNot));
    }

    private void keptOrNot(Outcome<Deed.Summary> outcome) {
        if (outcome instanceof Outcome.Failed<Deed.Summary> failed) {
            problem.set(Texts.say(
                    "Not kept: {0} Your points are kept on screen.",
                    failed.fault().getMessage()));
        } else {
            desk.saved();
            close.run();
        }
    }

    private Optional<Double> lastValue() {
        return subject.last()
                .get()
                .map(reading -> form.quantityProperty().get() == Quantity.TEMPERATURE
                        ? reading.temperatureCelsius()
                        : reading.humidityPercent())
                .filter(value -> !value.isNaN());
    }

    private void fit() {
        problem.set("");
        redressed.set("");
        try {
            Optional<String> lacking = form.lacking();
            missing.set(lacking.orElse(""));
            draft.set(
                    lacking.isPresent()
                            ? Optional.empty()
                            : Optional.of(desk.calibrations()
                                    .draft(form.sheet(
                                            subject.probe(),
                                            desk.days(),
                                            desk.clock().instant()))));
        } catch (IllegalArgumentException impossible) {
            missing.set(Texts.say("These points make no calibration: {0}.", impossible.getMessage()));
            draft.set(Optional.empty());
        }
        draft.get().ifPresent(changes::ask);
    }

    private void changeFound(Outcome<Change> outcome) {
        if (outcome instanceof Outcome.Done<Change> done) {
            Change change = done.value();
            if (draft.get().filter(change.draft()::equals).isPresent()) {
                redressed.set(CalibrationWords.redressed(
                        change.found(), change.draft().method().quantity(), desk.days()));
            }
        } else if (outcome instanceof Outcome.Failed<Change> failed) {
            redressed.set(Texts.say(
                    "The past readings could not be read: {0}", failed.fault().getMessage()));
        }
    }

    /** What a draft would change of past readings. */
    private record Change(Calibration draft, Redressing found) {}
}
