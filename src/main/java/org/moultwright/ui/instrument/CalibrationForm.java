package org.moultwright.ui.instrument;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.CalibrationMethod;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Quantity;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.RecordCalibration;

/** What is written of a calibration: its points, from when on it holds, and for how long. */
final class CalibrationForm {
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

    private final ObjectProperty<Quantity> quantity = new SimpleObjectProperty<>(Quantity.TEMPERATURE);
    private final ObservableList<PointEntry> points = FXCollections.observableArrayList(PointEntry::observables);
    private final ObjectProperty<From> from = new SimpleObjectProperty<>(From.NOW);
    private final ObjectProperty<@Nullable LocalDate> fromDay = new SimpleObjectProperty<>();
    private final MeasuredEntry lifeMonths =
            new MeasuredEntry(Texts.say("to be done again after, months"), 1, 60, "12");
    private final StringProperty note = new SimpleStringProperty("");

    CalibrationForm() {
        quantity.addListener((observed, before, now) -> beginAnew(now));
        beginAnew(Quantity.TEMPERATURE);
    }

    /** Has this run at every change. */
    void whenChanged(Runnable run) {
        InvalidationListener changed = observed -> run.run();
        points.addListener(changed);
        from.addListener(changed);
        fromDay.addListener(changed);
        lifeMonths.textProperty().addListener(changed);
        note.addListener(changed);
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

    void add(PointEntry.Kind kind) {
        points.add(new PointEntry(kind));
    }

    void remove(PointEntry point) {
        points.remove(point);
    }

    /** What is still to be written; empty once there is enough for a calibration. */
    Optional<String> lacking() {
        if (points.isEmpty()) {
            return Optional.of(Texts.say("Add a point."));
        }
        if (written().size() < points.size()) {
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

    /** All of it. Nothing may be lacking. */
    RecordCalibration.Sheet sheet(String probe, DayWords days, Instant now) {
        List<CalibrationPoint> written = written();
        LocalDate today = days.date(now);
        LocalDate again = today.plusMonths((long) lifeMonths.value().orElseThrow());
        return new RecordCalibration.Sheet(
                probe,
                method(written.size()),
                now,
                appliesFrom(days, now),
                Duration.ofDays(again.toEpochDay() - today.toEpochDay()),
                written,
                note.get().strip());
    }

    private List<CalibrationPoint> written() {
        return points.stream().flatMap(point -> point.point().stream()).toList();
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

    private Instant appliesFrom(DayWords days, Instant now) {
        LocalDate day = fromDay.get();
        if (from.get() == From.DAY && day != null) {
            return day.atStartOfDay(days.zone()).toInstant();
        }
        return from.get() == From.ALWAYS
                ? LocalDate.EPOCH.atStartOfDay(ZoneOffset.UTC).toInstant()
                : now;
    }

    private void beginAnew(Quantity what) {
        points.setAll(new PointEntry(what == Quantity.TEMPERATURE ? PointEntry.Kind.ICE : PointEntry.Kind.SALT));
    }
}
