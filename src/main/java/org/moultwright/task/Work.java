package org.moultwright.task;

/**
 * Something that takes a while.
 *
 * @param <T> what comes of it
 */
@FunctionalInterface
public interface Work<T> {
    /**
     * Does the work. Long work asks {@link Progress#requireGoingOn()} now and then.
     *
     * @throws InterruptedException if it is told to stop while it waits
     */
    T run(Progress progress) throws InterruptedException;
}
