package org.moultwright.ui.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.language.Degrees;
import org.moultwright.task.NewestQuestion;
import org.moultwright.task.Outcome;

/** When half of the tray chosen would have entered the last stage, under a few set-points beside each other. */
final class SetPointTable {
    private static final List<Integer> TRIED_CELSIUS = List.of(25, 26, 27, 28);

    private final ForecastDesk desk;
    private final NewestQuestion<Foreseen, List<Row>> questions;
    private final ObservableList<Row> rows = FXCollections.observableArrayList();

    SetPointTable(ForecastDesk desk) {
        this.desk = desk;
        this.questions = new NewestQuestion<>(desk.aside(), this::work, this::show);
    }

    /** Empty where there is too little to go on. */
    ObservableList<Row> rows() {
        return rows;
    }

    /** Rows of another tray stand until those of this one are there. */
    void choose(Optional<Foreseen> tray) {
        questions.withdraw();
        tray.ifPresentOrElse(questions::ask, rows::clear);
    }

    private List<Row> work(Foreseen tray) {
        List<Row> found = new ArrayList<>();
        for (int celsius : TRIED_CELSIUS) {
            desk.prepared()
                    .apply(tray.brood().code())
                    .flatMap(prepared -> Temperatures.under(prepared, celsius).tray(tray.code()))
                    .flatMap(forecast -> forecast.moult(tray.lastStage()))
                    .map(MoultForecast::half)
                    .ifPresent(half -> found.add(new Row(Degrees.words(celsius, 0), days(half))));
        }
        return found;
    }

    private String days(InstantInterval half) {
        return desk.days().days(half.p10(), half.p90());
    }

    private void show(Outcome<List<Row>> outcome) {
        rows.setAll(outcome instanceof Outcome.Done<List<Row>> done ? done.value() : List.of());
    }

    /** A set-point and the 80 % window under it, in words. */
    record Row(String celsius, String days) {}
}
