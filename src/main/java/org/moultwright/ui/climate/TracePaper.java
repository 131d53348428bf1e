package org.moultwright.ui.climate;

import org.moultwright.ui.chart.Trace;

/** Prints a picture of a trace. */
@FunctionalInterface
public interface TracePaper {
    /**
     * Asks where to, and prints.
     *
     * @param title what stands above the picture
     * @return what came of it, in a sentence for the keeper
     */
    String print(String title, Trace trace);
}
