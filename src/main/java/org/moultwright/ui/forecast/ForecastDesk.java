package org.moultwright.ui.forecast;

import javafx.beans.value.ObservableObjectValue;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.RoomView;

/**
 * All that the forecast screen works with.
 *
 * @param room the room as last read
 * @param days the keeper's days
 * @param vocabulary the names of the stages
 */
public record ForecastDesk(
        ObservableObjectValue<RoomView> room, DayWords days, ObservableObjectValue<Vocabulary> vocabulary) {}
