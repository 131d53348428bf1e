package org.moultwright.ui.forecast;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.language.Texts;
import org.moultwright.settings.PlanSettings;
import org.moultwright.text.DayWords;
import org.moultwright.text.OrderWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.workflow.BroodOrder;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.OrderTerms;
import org.moultwright.workflow.RoomView;

/** What to order for each brood, and by when. */
final class OrdersViewModel {
    private static final String NOTHING =
            Texts.say("Nothing to order yet. Once it can be said when slings come, what to order by when stands here.");
    private static final String NO_DAYS =
            Texts.say("Write whole days from 0 to {0}. Until then the figure before holds.", PlanSettings.MOST_DAYS);

    private final PlanChoices plans;
    private final DayWords days;
    private final ObservableList<Line> lines = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper nothing = new ReadOnlyStringWrapper("");
    private Function<OrderTerms, List<BroodOrder>> orders = terms -> List.of();
    private Function<BroodOrder, String> stages = order -> "";
    private Instant now = Instant.EPOCH;

    OrdersViewModel(PlanChoices plans, DayWords days) {
        this.plans = plans;
        this.days = days;
        plans.safetyProperty().addListener((observed, before, after) -> show());
        plans.settingsProperty().addListener((observed, before, after) -> show());
    }

    PlanChoices plans() {
        return plans;
    }

    /** One for each brood of which something can be said. */
    ObservableList<Line> lines() {
        return lines;
    }

    /** Stands there instead of lines; empty where there are some. */
    ReadOnlyStringProperty nothingProperty() {
        return nothing.getReadOnlyProperty();
    }

    /** Takes how long pots and labels are on their way; what is wrong with what was typed, or nothing if it was taken. */
    String potDays(String typed) {
        return take(typed, PlanSettings::withPotDays);
    }

    /** The same of food. */
    String foodDays(String typed) {
        return take(typed, PlanSettings::withFoodDays);
    }

    void read(RoomView room, Function<BroodView, Optional<BroodForecast>> forecasts, Vocabulary vocabulary) {
        now = room.now();
        stages = order -> vocabulary.plural(order.into());
        orders = terms -> room.broods().stream()
                .flatMap(brood -> forecasts.apply(brood).stream()
                        .flatMap(forecast -> BroodOrder.of(brood, forecast, terms).stream()))
                .toList();
        show();
    }

    private void show() {
        OrderWords words = new OrderWords(days, plans.safetyProperty().get());
        lines.setAll(orders.apply(plans.terms(days, now)).stream()
                .map(order -> new Line(
                        order.brood(),
                        words.pots(order.count(), order.pots(), order.hasBegun(), stages.apply(order)),
                        words.food(order.count(), order.food())))
                .toList());
        nothing.set(lines.isEmpty() ? NOTHING : "");
    }

    private String take(String typed, BiFunction<PlanSettings, Integer, PlanSettings> with) {
        Optional<Integer> whole = Optional.of(typed.strip())
                .filter(text -> text.matches("\\d{1,3}"))
                .map(Integer::valueOf)
                .filter(number -> number <= PlanSettings.MOST_DAYS);
        whole.map(number -> with.apply(plans.settings(), number)).ifPresent(plans::keep);
        return whole.isPresent() ? "" : NO_DAYS;
    }

    /** What to order for one brood, in sentences. */
    record Line(String brood, String pots, String food) {}
}
