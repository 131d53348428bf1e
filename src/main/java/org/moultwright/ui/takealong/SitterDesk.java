package org.moultwright.ui.takealong;

import java.time.InstantSource;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.alarm.AlarmViewModel;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.ui.shell.ShellViewModel;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.SitterDeeds;
import org.moultwright.workflow.SitterMode;
import org.moultwright.workflow.SittersWork;
import org.moultwright.workflow.UndoDeed;

/**
 * All that a sitter works with, and the keeper to hand the desk over and take it back.
 *
 * @param room the room as last read
 * @param readAgain asks for the room to be read anew; it need not be done when this returns
 * @param mode whether the desk is in a sitter's hands
 * @param deeds what a sitter writes down
 * @param undo takes it back
 * @param book tells what stands written
 * @param plans whom to call
 * @param alarms shown to a sitter too
 * @param runner runs all of this aside
 * @param shell where the keeper is told, once back, what was written
 * @param clock the day it is
 * @param days the keeper's days
 * @param vocabulary the names of the stages
 */
public record SitterDesk(
        ObservableObjectValue<RoomView> room,
        Runnable readAgain,
        SitterMode mode,
        SitterDeeds deeds,
        UndoDeed undo,
        BroodBook book,
        PlanChoices plans,
        AlarmViewModel alarms,
        Runner runner,
        ShellViewModel shell,
        InstantSource clock,
        DayWords days,
        ObservableObjectValue<Vocabulary> vocabulary) {
    SittersWork work() {
        return new SittersWork(book, mode);
    }
}
