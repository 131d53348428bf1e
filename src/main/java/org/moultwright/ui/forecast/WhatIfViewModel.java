package org.moultwright.ui.forecast;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.language.Texts;
import org.moultwright.task.NewestQuestion;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.BroodView;

/** The set-point tried on, and what would come of it. Nothing of it is ever kept. */
final class WhatIfViewModel {
    static final double LOWEST_CELSIUS = 22;
    static final double HIGHEST_CELSIUS = 30;
    private static final double USUAL_CELSIUS = 27;

    private final ForecastDesk desk;
    private final NewestQuestion<Tried, WhatIfAnswer> questions;
    private final DoubleProperty celsius = new SimpleDoubleProperty(USUAL_CELSIUS);
    private final ReadOnlyBooleanWrapper active = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Optional<WhatIfAnswer>> answer = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private OptionalDouble asItIsCelsius = OptionalDouble.empty();
    private boolean isSettling;

    WhatIfViewModel(ForecastDesk desk) {
        this.desk = desk;
        this.questions = new NewestQuestion<>(desk.aside(), this::work, this::show);
        celsius.addListener((observed, before, now) -> {
            if (!isSettling && Temperatures.tenths(before.doubleValue()) != Temperatures.tenths(now.doubleValue())) {
                active.set(true);
                ask();
            }
        });
    }

    /** Where the keeper's hand is, in °C: trying another temperature begins when this moves. */
    DoubleProperty celsiusProperty() {
        return celsius;
    }

    /** Whether a what-if is asked for, answered or not. */
    ReadOnlyBooleanProperty activeProperty() {
        return active.getReadOnlyProperty();
    }

    /** What is to be shown instead of the forecast; empty while all is as it is. */
    ReadOnlyObjectProperty<Optional<WhatIfAnswer>> answerProperty() {
        return answer.getReadOnlyProperty();
    }

    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** What the place of the tray chosen is set to, in °C. */
    OptionalDouble asItIsCelsius() {
        return asItIsCelsius;
    }

    void backToAsItIs() {
        questions.withdraw();
        active.set(false);
        problem.set("");
        settle();
        answer.set(Optional.empty());
    }

    /** The tray whose place the slider rests at while all is as it is. */
    void choose(Optional<Foreseen> tray) {
        asItIsCelsius = tray.flatMap(
                        chosen -> desk.prepared().apply(chosen.brood().code()))
                .map(prepared -> prepared.setPointCelsius(tray.orElseThrow().code()))
                .orElse(OptionalDouble.empty());
        if (!active.get()) {
            settle();
        }
    }

    /** The room is another: the same temperature is tried on it. */
    void roomChanged() {
        if (active.get()) {
            ask();
        }
    }

    private void settle() {
        isSettling = true;
        celsius.set(Math.max(LOWEST_CELSIUS, Math.min(HIGHEST_CELSIUS, asItIsCelsius.orElse(USUAL_CELSIUS))));
        isSettling = false;
    }

    private void ask() {
        List<String> broods =
                desk.room().get().broods().stream().map(BroodView::code).toList();
        questions.ask(new Tried(Temperatures.nearestTenthCelsius(celsius.get()), broods));
    }

    private WhatIfAnswer work(Tried tried) {
        Map<String, BroodForecast> byBrood = new HashMap<>();
        for (String brood : tried.broods()) {
            desk.prepared()
                    .apply(brood)
                    .ifPresent(prepared -> byBrood.put(brood, Temperatures.under(prepared, tried.celsius())));
        }
        return new WhatIfAnswer(tried.celsius(), byBrood);
    }

    private void show(Outcome<WhatIfAnswer> outcome) {
        if (outcome instanceof Outcome.Done<WhatIfAnswer> done) {
            problem.set("");
            answer.set(Optional.of(done.value()));
        } else if (outcome instanceof Outcome.Failed<WhatIfAnswer> failed) {
            problem.set(Texts.say(
                    "This could not be worked out: {0}. Go back to as it is.",
                    failed.fault().getMessage()));
        }
    }

    private record Tried(double celsius, List<String> broods) {}
}
