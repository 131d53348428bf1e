package org.moultwright.ui.instrument;

import java.time.InstantSource;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.ui.shell.SaveLine;
import org.moultwright.workflow.ClimateBook;
import org.moultwright.workflow.NoteDisplay;
import org.moultwright.workflow.RecordCalibration;
import org.moultwright.workflow.UndoDeed;

/**
 * All that the pages about instruments work with.
 *
 * @param book what is written down of instruments
 * @param calibrations writes down calibrations
 * @param displays writes down what displays showed
 * @param undo takes the last of it back
 * @param readAgain asks for the room to be read anew
 * @param runner reads and keeps aside
 * @param saveLine where it is said that something is kept
 * @param clock the keeper's now
 * @param days the keeper's days
 */
public record InstrumentDesk(
        ClimateBook book,
        RecordCalibration calibrations,
        NoteDisplay displays,
        UndoDeed undo,
        Runnable readAgain,
        Runner runner,
        SaveLine saveLine,
        InstantSource clock,
        DayWords days) {

    /** Says that something is on disk, offers to take it back, and has the room read anew. */
    void saved() {
        saveLine.saved(clock.instant(), () -> runner.run(progress -> undo.undo(), outcome -> readAgain.run()));
        readAgain.run();
    }
}
