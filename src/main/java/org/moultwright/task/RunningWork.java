package org.moultwright.task;

import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** One piece of work on its way: its thread, whether it was cancelled, and whom to tell. */
final class RunningWork<T> implements Runnable, Job, Progress {
    private final Work<T> work;
    private final Runner.Watcher watcher;
    private final Consumer<Outcome<T>> whenEnded;
    private final Executor tellOn;
    private boolean cancelled;
    private @Nullable Thread thread;

    RunningWork(Work<T> work, Runner.Watcher watcher, Consumer<Outcome<T>> whenEnded, Executor tellOn) {
        this.work = work;
        this.watcher = watcher;
        this.whenEnded = whenEnded;
        this.tellOn = tellOn;
    }

    @Override
    public void run() {
        take(Thread.currentThread());
        Outcome<T> outcome = outcome();
        take(null);
        tellOn.execute(() -> whenEnded.accept(outcome));
    }

    @Override
    public synchronized void cancel() {
        cancelled = true;
        if (thread != null) {
            thread.interrupt();
        }
    }

    @Override
    public synchronized boolean isCancelled() {
        return cancelled;
    }

    @Override
    public void report(double fraction, String words) {
        tellOn.execute(() -> watcher.progressed(fraction, words));
    }

    private Outcome<T> outcome() {
        try {
            requireGoingOn();
            return new Outcome.Done<>(work.run(this));
        } catch (CancellationException e) {
            return new Outcome.Cancelled<>();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return new Outcome.Cancelled<>();
        } catch (RuntimeException e) {
            return isCancelled() ? new Outcome.Cancelled<>() : new Outcome.Failed<>(e);
        }
    }

    private synchronized void take(@Nullable Thread runner) {
        thread = runner;
    }
}
