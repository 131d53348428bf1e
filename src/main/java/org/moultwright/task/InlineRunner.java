package org.moultwright.task;

import java.util.function.Consumer;

/** Runs work at once, on the caller's thread: for tests, and for commands without a window. */
public final class InlineRunner implements Runner {
    @Override
    public <T> Job run(Work<T> work, Watcher watcher, Consumer<Outcome<T>> whenEnded) {
        RunningWork<T> running = new RunningWork<>(work, watcher, whenEnded, Runnable::run);
        running.run();
        return running;
    }
}
