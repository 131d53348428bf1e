package org.moultwright.ui.instrument;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
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
import org.jspecify.annotations.Nullable;
import org.moultwright.compute.calibration.Redressing;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.CalibrationMethod;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Quantity;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.task.NewestQuestion;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.RecordCalibration;

/** A calibration being written: its points, what they come to, and what keeping it would change. */
public final class CalibrationViewModel {
    /** From which reading on a calibration holds. */
    enum From {
        NOW(Texts.say("from now on")),
        DAY(Texts.say("from a day on")),
        ALWAYS(Texts.say("all readings of this probe"));

        private final String word;

        From(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    private final InstrumentDesk desk;
    private final CalibrationSubject subject;
    private final Runnable close;
    private final ObjectProperty<Quantity> quantity = new SimpleObjectProperty<>(Quantity.TEMPERATURE);
    private final ObservableList<PointEntry> points = FXCollections.observableArrayList(PointEntry::observables);
    private final ObjectProperty<From> from = new SimpleObjectProperty<>(From.NOW);
    private final ObjectProperty<@Nullable LocalDate> fromDay = new SimpleObjectProperty<>();
    private final MeasuredEntry lifeMonths =
            new MeasuredEntry(Texts.say("to be done again after, months"), 1, 60, "12");
    private final StringProperty note = new SimpleStringProperty("");
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
        InvalidationListener fit = observed -> fit();
        points.addListener(fit);
        from.addListener(fit);
        fromDay.addListener(fit);
        lifeMonths.textProperty().addListener(fit);
        note.addListener(fit);
        quantity.addListener((observed, before, now) -> beginAnew(now));
        beginAnew(Quantity.TEMPERATURE);
    }

    String probe() {
        return subject.probe();
    }

    ObjectProperty<Quantity> quantityProperty() {
        return quantity;
    }

    ObservableList<PointEntry> points() {
        return points;
    }

    ObjectProperty<From> fromProperty() {
        return from;
    }

    ObjectProperty<@Nullable LocalDate> fromDayProperty() {
        return fromDay;
    }

    MeasuredEntry lifeMonths() {
        return lifeMonths;
    }

    StringProperty noteProperty() {
        return note;
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

    void add(PointEntry.Kind kind) {
        points.add(new PointEntry(kind));
    }

    void remove(PointEntry point) {
        points.remove(point);
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
                                CalibrationWords.unit(quantity.get()),
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

    private void beginAnew(Quantity what) {
        points.setAll(new PointEntry(what == Quantity.TEMPERATURE ? PointEntry.Kind.ICE : PointEntry.Kind.SALT));
    }

    private Optional<Double> lastValue() {
        return subject.last()
                .get()
                .map(reading -> quantity.get() == Quantity.TEMPERATURE
                        ? reading.temperatureCelsius()
                        : reading.humidityPercent())
                .filter(value -> !value.isNaN());
    }

    private void fit() {
        List<CalibrationPoint> written =
                points.stream().flatMap(point -> point.point().stream()).toList();
        problem.set("");
        redressed.set("");
        try {
            Optional<String> lacking = lacking(written);
            missing.set(lacking.orElse(""));
            draft.set(
                    lacking.isPresent()
                            ? Optional.empty()
                            : Optional.of(desk.calibrations().draft(sheet(written))));
        } catch (IllegalArgumentException impossible) {
            missing.set(Texts.say("These points make no calibration: {0}.", impossible.getMessage()));
            draft.set(Optional.empty());
        }
        draft.get().ifPresent(changes::ask);
    }

    private Optional<String> lacking(List<CalibrationPoint> written) {
        if (points.isEmpty()) {
            return Optional.of(Texts.say("Add a point."));
        }
        if (written.size() < points.size()) {
            return Optional.of(Texts.say("Write what the probe shows at each point."));
        }
        if (quantity.get() == Quantity.TEMPERATURE
                && points.size() == 1
                && points.get(0).kind() == PointEntry.Kind.THERMOMETER) {
            return Optional.of(Texts.say(
                    "Beside a thermometer two points are needed, at least {0} apart. One may be ice.",
                    Degrees.apartWords(4, 0)));
        }
        if (lifeMonths.value().isEmpty()) {
            return Optional.of(Texts.say("Write after how many months it is to be done again."));
        }
        return from.get() == From.DAY && fromDay.get() == null
                ? Optional.of(Texts.say("Choose the day from which on it holds."))
                : Optional.empty();
    }

    private RecordCalibration.Sheet sheet(List<CalibrationPoint> written) {
        Instant now = desk.clock().instant();
        LocalDate today = desk.days().date(now);
        LocalDate again = today.plusMonths((long) lifeMonths.value().orElseThrow());
        return new RecordCalibration.Sheet(
                subject.probe(),
                method(written.size()),
                now,
                appliesFrom(now),
                Duration.ofDays(again.toEpochDay() - today.toEpochDay()),
                written,
                note.get().strip());
    }

    private CalibrationMethod method(int count) {
        if (quantity.get() == Quantity.HUMIDITY) {
            return CalibrationMethod.SATURATED_SALTS;
        }
        if (count == 1) {
            return CalibrationMethod.ICE_POINT;
        }
        return count == 2 ? CalibrationMethod.TWO_POINTS : CalibrationMethod.LEAST_SQUARES;
    }

    private Instant appliesFrom(Instant now) {
        LocalDate day = fromDay.get();
        if (from.get() == From.DAY && day != null) {
            return day.atStartOfDay(desk.days().zone()).toInstant();
        }
        return from.get() == From.ALWAYS
                ? LocalDate.EPOCH.atStartOfDay(ZoneOffset.UTC).toInstant()
                : now;
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
