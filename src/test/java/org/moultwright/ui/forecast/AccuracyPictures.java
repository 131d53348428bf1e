package org.moultwright.ui.forecast;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Parent;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.Milestone;
import org.moultwright.compute.scoring.Outcome;
import org.moultwright.domain.Stage;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.plan.ChosenPlans;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.ScoreForecasts;

/** How good invented dates were, open, for tests that look at every view. */
public final class AccuracyPictures {
    private AccuracyPictures() {}

    public static Parent accuracy() {
        ForecastViewModel model = new ForecastViewModel(new ForecastDesk(
                new SimpleObjectProperty<>(RoomFixture.room()),
                brood -> Optional.empty(),
                new InlineRunner(),
                () -> List.of(scored()),
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY),
                ChosenPlans.usual()));
        ForecastView view = new ForecastView(model, new Appearance().paletteProperty());
        model.openAccuracy();
        return view;
    }

    private static ScoreForecasts.Scored scored() {
        List<Outcome> outcomes = new ArrayList<>();
        for (int day = 0; day < 6; day++) {
            Instant middle = RoomFixture.NOW.plus(Duration.ofDays(day));
            outcomes.add(new Outcome(
                    RoomFixture.NOW.minus(Duration.ofDays(3)),
                    new InstantInterval(middle.minus(Duration.ofDays(2)), middle, middle.plus(Duration.ofDays(2))),
                    middle.plus(Duration.ofHours(9 * day - 20))));
        }
        return new ScoreForecasts.Scored(Stage.INSTAR2, Milestone.HALF, outcomes);
    }
}
