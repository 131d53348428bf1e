package org.moultwright.boot;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;

/** The start of the toolkit, once in a program: begun aside, so that a store can be opened meanwhile, and awaited. */
final class ToolkitStart {
    private static final FutureTask<Boolean> START = new FutureTask<>(() -> Platform.startup(Rehearsal::play), true);

    private ToolkitStart() {}

    static void begin() {
        new Thread(START, "toolkit start").start();
    }

    /**
     * Returns once the toolkit runs, begun here if it was not before.
     *
     * @throws UnsupportedOperationException if there is no display
     */
    static void await() throws InterruptedException {
        START.run();
        try {
            START.get();
        } catch (ExecutionException fault) {
            throw fault.getCause() instanceof UnsupportedOperationException noDisplay
                    ? noDisplay
                    : new IllegalStateException("the toolkit could not be started", fault.getCause());
        }
    }
}
