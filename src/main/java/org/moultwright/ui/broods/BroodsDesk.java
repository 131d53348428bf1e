package org.moultwright.ui.broods;

import java.time.InstantSource;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.workflow.RoomView;

/**
 * All that the broods screen works with.
 *
 * @param room the room as last read
 * @param readAgain asks for the room to be read anew; it need not be done when this returns
 * @param waysIn how broods come to the desk
 * @param beliefs what a belief about a brood's timing is kept with
 * @param paper how a brood's page comes on paper
 * @param runner keeps a new sac aside
 * @param clock says when a sac was opened
 * @param days the keeper's days
 * @param vocabulary the names of the stages
 * @param photos shows photos
 */
public record BroodsDesk(
        ObservableObjectValue<RoomView> room,
        Runnable readAgain,
        WaysIn waysIn,
        BeliefWays beliefs,
        BroodPaper paper,
        Runner runner,
        InstantSource clock,
        DayWords days,
        ObservableObjectValue<Vocabulary> vocabulary,
        PhotoDesk photos) {}
