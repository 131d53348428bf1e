package org.moultwright.ui.intake;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.ReadingFiles;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TakeInReadings;
import org.moultwright.workflow.UndoDeed;
import org.moultwright.workflow.WriteClimate;

/**
 * All that writing in the climate works with.
 *
 * @param room the room as last read
 * @param readAgain asks for the room to be read anew
 * @param write keeps what is typed
 * @param undo takes it back
 * @param files understands files of readings
 * @param takeIn takes them in
 * @param chooser asks the keeper for a file
 * @param keeper runs entries aside
 * @param intake runs a file's way in aside, behind nothing else
 * @param clock the keeper's now
 * @param days the keeper's days
 */
public record IntakeDesk(
        ObservableObjectValue<RoomView> room,
        Runnable readAgain,
        WriteClimate write,
        UndoDeed undo,
        ReadingFiles files,
        TakeInReadings takeIn,
        Supplier<Optional<Path>> chooser,
        Runner keeper,
        Runner intake,
        InstantSource clock,
        DayWords days) {}
