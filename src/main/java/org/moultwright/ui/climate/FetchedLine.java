package org.moultwright.ui.climate;

import java.util.List;
import org.moultwright.ui.chart.ReadingPyramid;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceWindow;

/**
 * What was read of one probe.
 *
 * @param window the stretch that was read
 * @param readings corrected
 * @param excursions where good readings stayed beyond what is wanted there
 */
record FetchedLine(String probe, TraceWindow window, ReadingPyramid readings, List<Trace.Stretch> excursions) {
    FetchedLine {
        excursions = List.copyOf(excursions);
    }

    Trace.Line line() {
        return new Trace.Line(probe, readings);
    }
}
