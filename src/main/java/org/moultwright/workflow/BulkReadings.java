package org.moultwright.workflow;

import java.util.List;
import java.util.function.Supplier;
import org.moultwright.domain.ProbeStay;

/** Takes in readings by the million, each file of them as one deed. */
@FunctionalInterface
public interface BulkReadings {

    /**
     * Takes in many readings, all or nothing; they are on disk when this returns. Of an instant the reading that is
     * there already stays, so that taking in the same readings twice changes nothing. The deed brought those that were
     * not there before, and undone it takes them out again; where it neither brings one nor tells of a place, it is
     * not kept.
     *
     * @param summary how the deed is named and listed
     * @param readings hands them over while the transaction is open; what it throws leaves no trace of them
     * @param placings where their probe stood, asked once all of them were handed over
     * @return how many were not there before
     */
    long takeIn(Deed.Summary summary, ReadingSource readings, Supplier<List<ProbeStay>> placings);
}
