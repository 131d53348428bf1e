package org.moultwright.ui.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.language.Texts;
import org.moultwright.text.ForecastWords;
import org.moultwright.text.LearnedWords;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TaughtBy;

/** What is said of whole broods: how many come of each, what taught its timing, what must be known of it. */
final class BroodLines {
    private final ObservableList<Yield> yields = FXCollections.observableArrayList();
    private final ObservableList<String> learned = FXCollections.observableArrayList();
    private final ObservableList<String> notes = FXCollections.observableArrayList();
    private List<LearnedWords.Learned> taught = List.of();

    ObservableList<Yield> yields() {
        return yields;
    }

    /** What the timing was learned from, in sentences. */
    ObservableList<String> learned() {
        return learned;
    }

    /** What a reader of the forecast must know, in sentences. */
    ObservableList<String> notes() {
        return notes;
    }

    /** Each brood with animals in trays or an unopened sac, and whom it learned from. */
    List<LearnedWords.Learned> taught() {
        return taught;
    }

    void read(RoomView room, Function<BroodView, Optional<BroodForecast>> forecasts, ForecastWords words) {
        List<Yield> ahead = new ArrayList<>();
        List<String> known = new ArrayList<>();
        List<LearnedWords.Learned> found = new ArrayList<>();
        for (BroodView brood : room.broods()) {
            boolean isUnopened =
                    forecasts.apply(brood).flatMap(BroodForecast::sac).isPresent();
            if (isUnopened || brood.record().ledger().aliveInTrays() > 0) {
                forecasts.apply(brood).ifPresent(forecast -> {
                    ahead.add(yieldOf(brood, forecast, words));
                    found.add(new LearnedWords.Learned(forecast, TaughtBy.named(brood, room)));
                    forecast.notes().forEach(note -> known.add(brood.code() + ": " + words.note(note)));
                });
            }
        }
        taught = found;
        yields.setAll(ahead);
        learned.setAll(LearnedWords.sentences(found));
        notes.setAll(known);
    }

    private static Yield yieldOf(BroodView brood, BroodForecast forecast, ForecastWords words) {
        if (forecast.sac().isPresent()) {
            return new Yield(brood.code(), Texts.say("unknown"), Texts.say("the sac is not opened"));
        }
        String of = Texts.say("of {0} opened", brood.record().ledger().opened());
        String stages = forecast.yield()
                .map(count -> words.stages(count, forecast.yieldInto()))
                .orElseGet(() -> words.vocabulary().plural(forecast.yieldInto()));
        return new Yield(
                brood.code(),
                forecast.yield().map(ForecastWords::count).orElse(Texts.say("too early to say")),
                stages + ", " + of);
    }

    /** How many are expected of one brood. */
    record Yield(String brood, String count, String of) {}
}
