package org.moultwright.workflow;

/** Takes in readings by the million. */
@FunctionalInterface
public interface BulkReadings {

    /**
     * Takes in many readings, all or nothing; they are on disk when this returns. Of an instant the reading that is
     * there already stays, so that taking in the same readings twice changes nothing.
     *
     * @param readings hands them over while the transaction is open; what it throws leaves no trace of them
     * @return how many were not there before
     */
    long takeIn(ReadingSource readings);
}
