package org.moultwright.ui.climate;

import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.ui.finder.FinderDesk;
import org.moultwright.ui.instrument.InstrumentDesk;
import org.moultwright.workflow.AlarmJournal;
import org.moultwright.workflow.KeepWatch;
import org.moultwright.workflow.KnownLines;
import org.moultwright.workflow.LeftBeside;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.ReadingLog;
import org.moultwright.workflow.RoomView;

/**
 * All that the climate screen works with.
 *
 * @param room the room as last read
 * @param log the readings of all probes
 * @param watch hears what the probes on a wire say
 * @param journal what alarms there were
 * @param lastTurn changes with every line of the journal
 * @param beside what loggers beside the desk have left for its store
 * @param links probes on a wire
 * @param known the lines listened to when the desk was closed last
 * @param instruments calibrations and displays
 * @param finding finds out how an unknown probe speaks
 * @param walls what the keeper said of the coldest walls
 * @param paper prints a picture of the trace
 * @param runner fetches readings aside
 * @param lineRunner gives a runner of its own to each wire, since listening to one never ends
 * @param screen runs what was heard on the thread of the screen
 * @param clock says how old a reading is
 * @param days the keeper's days
 */
public record ClimateDesk(
        ObservableObjectValue<RoomView> room,
        ReadingLog log,
        KeepWatch watch,
        AlarmJournal journal,
        ObservableObjectValue<Optional<AlarmEntry>> lastTurn,
        ObservableObjectValue<LeftBeside> beside,
        ProbeLinks links,
        KnownLines known,
        InstrumentDesk instruments,
        FinderDesk finding,
        WallBook walls,
        TracePaper paper,
        Runner runner,
        Supplier<Runner> lineRunner,
        Executor screen,
        InstantSource clock,
        DayWords days) {}
