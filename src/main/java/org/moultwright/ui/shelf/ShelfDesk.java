package org.moultwright.ui.shelf;

import java.time.InstantSource;
import java.util.List;
import java.util.function.Supplier;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.label.LabelDesk;
import org.moultwright.ui.shell.SaveLine;
import org.moultwright.workflow.ArrangeShelf;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.ShareTrays;
import org.moultwright.workflow.UndoDeed;
import org.moultwright.workflow.WatchView;

/**
 * All that the shelf works with.
 *
 * @param room the room as last read
 * @param heard what the probes on wires say now; of the toolkit's thread
 * @param readAgain asks for the room to be read anew; it need not be done when this returns
 * @param arrange adds, moves and puts away containers
 * @param share moves animals between trays
 * @param undo takes the last deed back
 * @param labels makes labels
 * @param runner runs all of this aside
 * @param saveLine is told what was saved
 * @param clock says when it is
 * @param days the keeper's days
 * @param vocabulary the names of the stages
 */
public record ShelfDesk(
        ObservableObjectValue<RoomView> room,
        Supplier<List<WatchView.Place>> heard,
        Runnable readAgain,
        ArrangeShelf arrange,
        ShareTrays share,
        UndoDeed undo,
        LabelDesk labels,
        Runner runner,
        SaveLine saveLine,
        InstantSource clock,
        DayWords days,
        ObservableObjectValue<Vocabulary> vocabulary) {}
