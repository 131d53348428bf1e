package org.moultwright.ui.forecast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.Milestone;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.task.NewestQuestion;
import org.moultwright.task.Outcome;

/**
 * When half of the tray chosen would have entered the last stage, or most once half have, under a few set-points
 * beside each other.
 */
final class SetPointTable {
    private static final List<Integer> TRIED_CELSIUS = List.of(25, 26, 27, 28);

    private final ForecastDesk desk;
    private final NewestQuestion<Foreseen, List<Row>> questions;
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper instead = new ReadOnlyStringWrapper("");

    SetPointTable(ForecastDesk desk) {
        this.desk = desk;
        this.questions = new NewestQuestion<>(desk.aside(), this::work, this::show);
    }

    /** Empty where there is too little to go on, where all is over and until they are worked out. */
    ObservableList<Row> rows() {
        return rows;
    }

    /** What to say in the place of rows; empty where they are there or the title has said it. */
    ReadOnlyStringProperty insteadProperty() {
        return instead.getReadOnlyProperty();
    }

    /** Rows of another tray stand until those of this one are there. */
    void choose(Optional<Foreseen> tray) {
        questions.withdraw();
        Optional<Foreseen> movable = tray.filter(chosen -> chosen.movable(now()).isPresent());
        if (movable.isEmpty()) {
            rows.clear();
        }
        instead.set(movable.isPresent() && rows.isEmpty() ? Texts.say("The dates are being worked out.") : "");
        movable.ifPresent(questions::ask);
    }

    private List<Row> work(Foreseen tray) {
        Milestone milestone = tray.movable(now()).orElse(Milestone.MOST);
        List<Row> found = new ArrayList<>();
        for (int celsius : TRIED_CELSIUS) {
            desk.prepared()
                    .apply(tray.brood().code())
                    .flatMap(prepared -> Temperatures.under(prepared, celsius).tray(tray.code()))
                    .flatMap(forecast -> new Foreseen(tray.brood(), tray.tray(), forecast).last(milestone))
                    .ifPresent(when -> found.add(new Row(Degrees.words(celsius, 0), days(when))));
        }
        return found;
    }

    private Instant now() {
        return desk.room().get().now();
    }

    private String days(InstantInterval when) {
        return desk.days().days(when.p10(), when.p90());
    }

    private void show(Outcome<List<Row>> outcome) {
        rows.setAll(outcome instanceof Outcome.Done<List<Row>> done ? done.value() : List.of());
        instead.set(rows.isEmpty() ? Texts.say("These dates could not be worked out.") : "");
    }

    /** A set-point and the 80 % window under it, in words. */
    record Row(String celsius, String days) {}
}
