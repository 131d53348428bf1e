package org.moultwright.task;

import java.time.Duration;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Runs work one after another on a thread of its own and tells outcomes elsewhere, such as on the thread
 * of the screen. The thread does not keep the program alive. Work that comes after it was closed is cancelled.
 */
public final class BackgroundRunner implements Runner, AutoCloseable {
    private final ExecutorService worker;
    private final Executor tellOn;

    /**
     * @param name of the thread
     * @param tellOn where progress and outcomes are told
     */
    public BackgroundRunner(String name, Executor tellOn) {
        this.tellOn = tellOn;
        this.worker = Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            return thread;
        });
    }

    @Override
    public <T> Job run(Work<T> work, Watcher watcher, Consumer<Outcome<T>> whenEnded) {
        RunningWork<T> running = new RunningWork<>(work, watcher, whenEnded, tellOn);
        // execute, not submit: an error that is no exception reaches the thread's handler instead of a
        // future nobody asks.
        try {
            worker.execute(running);
        } catch (RejectedExecutionException closed) {
            // It takes no more work: what comes later is told that it was cancelled.
            running.cancel();
            running.run();
        }
        return running;
    }

    /** Takes no more work, and waits so long for what runs to end by itself; then interrupts it. */
    public void finish(Duration patience) {
        worker.shutdown();
        try {
            if (!worker.awaitTermination(patience.toMillis(), TimeUnit.MILLISECONDS)) {
                worker.shutdownNow();
            }
        } catch (InterruptedException e) {
            worker.shutdownNow();
            Thread.currentThread().interrupt();
        }
    }

    /** Interrupts what runs and takes no more work. */
    @Override
    public void close() {
        worker.shutdownNow();
    }
}
