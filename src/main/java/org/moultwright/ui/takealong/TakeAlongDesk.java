package org.moultwright.ui.takealong;

import java.time.InstantSource;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.SaveChooser;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.workflow.CalendarFiles;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.SitterSheets;

/**
 * All that is needed to take the forecast along.
 *
 * @param room the room as last read
 * @param plans the days away and on what terms something is ordered
 * @param calendars writes calendars
 * @param calendarChooser asks where a calendar goes
 * @param sheets writes sitter's sheets
 * @param sheetChooser asks where a sheet goes
 * @param runner runs all of this aside
 * @param clock says when it was told
 * @param days the keeper's days
 * @param vocabulary the names of the stages
 */
public record TakeAlongDesk(
        ObservableObjectValue<RoomView> room,
        PlanChoices plans,
        CalendarFiles calendars,
        SaveChooser calendarChooser,
        SitterSheets sheets,
        SaveChooser sheetChooser,
        Runner runner,
        InstantSource clock,
        DayWords days,
        ObservableObjectValue<Vocabulary> vocabulary) {}
