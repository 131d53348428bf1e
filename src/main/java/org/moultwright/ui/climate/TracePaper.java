package org.moultwright.ui.climate;

import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;
import org.moultwright.ui.chart.Trace;

/** Puts a picture of a trace on paper. */
public interface TracePaper {
    /**
     * Asks where to, and prints.
     *
     * @param title what stands above the picture
     * @return what came of it, in a sentence for the keeper
     */
    String print(String title, Trace trace);

    /**
     * Asks for a file.
     *
     * @param title what stands above the picture
     * @param madeAt the time the file bears
     * @return saves the picture there as PDF, aside, and says in a sentence where; empty where the keeper thought better
     *     of it
     */
    Optional<Supplier<String>> toSave(String title, Trace trace, Instant madeAt);
}
