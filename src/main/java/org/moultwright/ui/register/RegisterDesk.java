package org.moultwright.ui.register;

import java.time.InstantSource;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.domain.label.Paper;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.SaveChooser;
import org.moultwright.ui.label.DesignChoice;
import org.moultwright.ui.label.LabelDesk;
import org.moultwright.ui.shell.SaveLine;
import org.moultwright.workflow.HandOverSlips;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TendPots;
import org.moultwright.workflow.UndoDeed;

/**
 * All that the register works with.
 *
 * @param room the room as last read
 * @param readAgain asks for the room to be read anew; it need not be done when this returns
 * @param tend writes down what happened to pots
 * @param undo takes the last deed back
 * @param slips puts hand-over slips on paper
 * @param chooseSlip asks where a slip goes
 * @param labels what labels are made with
 * @param design what stands on them beside their codes
 * @param paper what slips are written on unless the keeper chooses another
 * @param runner runs all of this aside
 * @param saveLine is told what was saved
 * @param clock says when it is
 * @param days the keeper's days
 * @param vocabulary the names of the stages
 */
public record RegisterDesk(
        ObservableObjectValue<RoomView> room,
        Runnable readAgain,
        TendPots tend,
        UndoDeed undo,
        HandOverSlips slips,
        SaveChooser chooseSlip,
        LabelDesk labels,
        DesignChoice design,
        Paper paper,
        Runner runner,
        SaveLine saveLine,
        InstantSource clock,
        DayWords days,
        ObservableObjectValue<Vocabulary> vocabulary) {}
