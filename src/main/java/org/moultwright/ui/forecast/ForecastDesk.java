package org.moultwright.ui.forecast;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.compute.forecast.PreparedForecast;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.ScoreForecasts;

/**
 * All that the forecast screen works with.
 *
 * @param room the room as last read
 * @param prepared what the forecast of a brood was made from, by its code
 * @param aside works out what-ifs
 * @param scores holds the forecasts kept against what happened; may take a while
 * @param days the keeper's days
 * @param vocabulary the names of the stages
 * @param plans the days away and on what terms something is ordered
 */
public record ForecastDesk(
        ObservableObjectValue<RoomView> room,
        Function<String, Optional<PreparedForecast>> prepared,
        Runner aside,
        Supplier<List<ScoreForecasts.Scored>> scores,
        DayWords days,
        ObservableObjectValue<Vocabulary> vocabulary,
        PlanChoices plans) {}
