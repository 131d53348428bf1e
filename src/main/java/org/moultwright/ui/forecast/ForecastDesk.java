package org.moultwright.ui.forecast;

import java.util.Optional;
import java.util.function.Function;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.compute.forecast.PreparedForecast;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.workflow.RoomView;

/**
 * All that the forecast screen works with.
 *
 * @param room the room as last read
 * @param prepared what the forecast of a brood was made from, by its code
 * @param aside works out what-ifs
 * @param days the keeper's days
 * @param vocabulary the names of the stages
 * @param plans the days away and on what terms something is ordered
 */
public record ForecastDesk(
        ObservableObjectValue<RoomView> room,
        Function<String, Optional<PreparedForecast>> prepared,
        Runner aside,
        DayWords days,
        ObservableObjectValue<Vocabulary> vocabulary,
        PlanChoices plans) {}
