package org.moultwright.task;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

/**
 * Runs work one after another on a thread of its own and tells outcomes elsewhere, such as on the thread
 * of the screen. The thread does not keep the program alive.
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
        worker.execute(running);
        return running;
    }

    /** Interrupts what runs and takes no more work. */
    @Override
    public void close() {
        worker.shutdownNow();
    }
}
