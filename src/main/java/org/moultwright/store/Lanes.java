package org.moultwright.store;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import org.moultwright.language.Texts;

/**
 * The store's own threads: one that writes, a few that read.
 *
 * <p>No other thread touches the database's file, because a thread interrupted while it does would close
 * the file for all. A caller interrupted while it waits goes on waiting, and is interrupted afterwards.
 */
final class Lanes {
    private static final int READERS = 2;

    private final ExecutorService writer = Executors.newSingleThreadExecutor(task -> daemon(task, "store-writer"));
    private final ExecutorService readers = Executors.newFixedThreadPool(READERS, task -> daemon(task, "store-reader"));

    <T> T write(Callable<T> work) {
        return await(writer, work);
    }

    <T> T read(Callable<T> work) {
        return await(readers, work);
    }

    /**
     * Takes nothing more, and waits until all that was begun has ended.
     *
     * @return false if this was done before
     */
    synchronized boolean close() {
        if (writer.isShutdown()) {
            return false;
        }
        writer.shutdown();
        readers.shutdown();
        return waited(() -> writer.awaitTermination(Long.MAX_VALUE, TimeUnit.NANOSECONDS))
                && waited(() -> readers.awaitTermination(Long.MAX_VALUE, TimeUnit.NANOSECONDS));
    }

    private static <T> T await(ExecutorService lane, Callable<T> work) {
        try {
            return waited(lane.submit(work)::get);
        } catch (RejectedExecutionException e) {
            throw new StoreException(StoreException.Reason.FAILED, Texts.say("The store is already closed."), e);
        }
    }

    private static <T> T waited(Wait<T> wait) {
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return wait.end();
                } catch (InterruptedException e) {
                    interrupted = true;
                } catch (ExecutionException e) {
                    throw Faults.unchecked(e.getCause());
                }
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private static Thread daemon(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }

    /** Something to wait for, again after an interrupt. */
    private interface Wait<T> {
        T end() throws InterruptedException, ExecutionException;
    }
}
