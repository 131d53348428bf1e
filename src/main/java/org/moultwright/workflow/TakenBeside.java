package org.moultwright.workflow;

import java.util.List;

/**
 * Readings of a probe that another program had left beside the store, now in it.
 *
 * @param readings as they are kept
 */
public record TakenBeside(String probe, List<ReadingLog.Logged> readings) {
    public TakenBeside {
        readings = List.copyOf(readings);
    }
}
