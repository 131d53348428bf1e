package org.moultwright.ui.round;

import java.time.InstantSource;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.draft.BegunDesk;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.shell.SaveLine;
import org.moultwright.workflow.RecordRound;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.SheetDraft;
import org.moultwright.workflow.UndoDeed;

/**
 * All that the round works with.
 *
 * @param room the room as last read
 * @param readAgain asks for the room to be read anew; it need not be done when this returns
 * @param record keeps a sheet
 * @param undo takes the last deed back
 * @param runner runs both aside
 * @param saveLine is told what was saved
 * @param clock says when the keeper looked
 * @param days the keeper's days
 * @param vocabulary the names of the stages
 * @param begun where sheets wait that are begun and not saved
 * @param sounds says tallies by ear
 * @param photos shows and attaches photos
 */
public record RoundDesk(
        ObservableObjectValue<RoomView> room,
        Runnable readAgain,
        RecordRound record,
        UndoDeed undo,
        Runner runner,
        SaveLine saveLine,
        InstantSource clock,
        DayWords days,
        ObservableObjectValue<Vocabulary> vocabulary,
        BegunDesk<SheetDraft> begun,
        TallySounds sounds,
        PhotoDesk photos) {}
