package org.moultwright.task;

import java.util.concurrent.CancellationException;

/** What work says of itself while it runs, and how it learns that nobody wants it any more. */
public interface Progress {
    /**
     * Says how far the work is.
     *
     * @param fraction done so far, within [0, 1]
     * @param words what is being done
     */
    void report(double fraction, String words);

    boolean isCancelled();

    /**
     * Returns if the work shall go on.
     *
     * @throws CancellationException if it was cancelled
     */
    default void requireGoingOn() {
        if (isCancelled()) {
            throw new CancellationException();
        }
    }
}
