package org.moultwright.ui.forecast;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.compute.forecast.Milestone;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.text.Listing;
import org.moultwright.workflow.ScoreForecasts;

/** How good the dates of completed broods were, event by event. */
final class AccuracyViewModel {
    private static final String NONE_YET =
            Texts.say("No date can be judged yet. Every forecast is kept as it is made; once a brood is over, "
                    + "it stands here beside what happened.");
    private static final String READING = Texts.say("Holding the forecasts made against what happened.");

    private final ForecastDesk desk;
    private final Runnable close;
    private final ObservableList<ScoreLine> lines = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<ScoreLine>> chosen = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper(READING);

    AccuracyViewModel(ForecastDesk desk, Runnable close) {
        this.desk = desk;
        this.close = close;
        desk.aside().run(progress -> desk.scores().get(), this::scored);
    }

    /** One for each stage and share of it, in the order they happen. */
    ObservableList<ScoreLine> lines() {
        return lines;
    }

    ObjectProperty<Optional<ScoreLine>> chosenProperty() {
        return chosen;
    }

    /** What is to be said of all of them, in sentences. */
    ReadOnlyStringProperty toldProperty() {
        return told.getReadOnlyProperty();
    }

    void close() {
        close.run();
    }

    private void scored(Outcome<List<ScoreForecasts.Scored>> outcome) {
        if (outcome instanceof Outcome.Failed<List<ScoreForecasts.Scored>> failed) {
            told.set(Texts.say(
                    "The forecasts kept could not be read. {0}", failed.fault().getMessage()));
        } else if (outcome instanceof Outcome.Done<List<ScoreForecasts.Scored>> done) {
            lines.setAll(done.value().stream()
                    .map(scored -> ScoreLine.of(scored, desk.vocabulary().get()))
                    .toList());
            chosen.set(lines.stream()
                    .filter(line -> line.milestone() == Milestone.HALF)
                    .reduce((first, last) -> last)
                    .or(() -> lines.stream().findFirst()));
            told.set(told(lines));
        }
    }

    private static String told(List<ScoreLine> lines) {
        if (lines.isEmpty()) {
            return NONE_YET;
        }
        List<String> few =
                lines.stream().filter(ScoreLine::isFew).map(ScoreLine::event).toList();
        return few.isEmpty()
                ? ""
                : Texts.say(
                        "Too few to judge by: {0}. What happened in fewer than {1} trays says little, however "
                                + "many forecasts were made of it.",
                        Listing.and(few), ScoreLine.FEW_EVENTS);
    }
}
