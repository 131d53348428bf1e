package org.moultwright.ui.climate;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.RollUpLevel;
import org.moultwright.ui.chart.ReadingPyramid;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceWindow;
import org.moultwright.workflow.TraceReadings;

/**
 * What was read of one probe.
 *
 * @param window the stretch that was read
 * @param level how coarse it is; empty where each reading stands for itself
 * @param readings corrected
 * @param excursions where good readings stayed beyond what is wanted there
 */
record FetchedLine(
        String probe,
        TraceWindow window,
        Optional<RollUpLevel> level,
        ReadingPyramid readings,
        List<Trace.Stretch> excursions) {
    /** About as many pixels as a trace is wide: nothing finer need be fetched. */
    static final int PIXELS = 1600;

    FetchedLine {
        excursions = List.copyOf(excursions);
    }

    /** Whether a stretch lies within this one, and can be shown as fine as it is seen. */
    boolean shows(TraceWindow shown) {
        return window.holds(shown)
                && level.map(coarse -> TraceReadings.isFineEnough(coarse, shown.length(), PIXELS))
                        .orElse(true);
    }

    /** A longer time without a good reading is a gap; within one roll-up nothing is known of any. */
    Duration longestBridged() {
        return bridged(level);
    }

    static Duration bridged(Optional<RollUpLevel> level) {
        return level.map(coarse -> Duration.ofMillis(coarse.millis()))
                .filter(coarse -> coarse.compareTo(TraceSource.LONGEST_BRIDGED) > 0)
                .orElse(TraceSource.LONGEST_BRIDGED);
    }

    Trace.Line line() {
        return new Trace.Line(probe, readings, level.isPresent());
    }
}
