package org.moultwright.task;

import java.util.function.Consumer;

/**
 * Runs work and tells how it ended.
 *
 * <p>Every exception of the work arrives as {@link Outcome.Failed}; none is lost. The outcome is told
 * exactly once.
 */
public interface Runner {
    /**
     * Runs work.
     *
     * @param watcher is told of progress, on the thread outcomes are told on
     * @param whenEnded is told how it ended
     */
    <T> Job run(Work<T> work, Watcher watcher, Consumer<Outcome<T>> whenEnded);

    /** Runs work whose progress nobody watches. */
    default <T> Job run(Work<T> work, Consumer<Outcome<T>> whenEnded) {
        return run(work, Watcher.NOBODY, whenEnded);
    }

    /** Sees how far work is. */
    @FunctionalInterface
    interface Watcher {
        Watcher NOBODY = (fraction, words) -> {};

        void progressed(double fraction, String words);
    }
}
