package org.moultwright.task;

/** Work that was handed to a {@link Runner}. */
public interface Job {
    /** Asks the work to stop; it ends as {@link Outcome.Cancelled} unless it was done already. */
    void cancel();
}
