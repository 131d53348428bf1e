package org.moultwright.boot;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;
import org.moultwright.text.DayWords;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.theme.Fonts;

/** The start of the toolkit, once in a program: begun aside, so that a store can be opened meanwhile, and awaited. */
final class ToolkitStart {
    private static final FutureTask<Boolean> START = new FutureTask<>(() -> Platform.startup(() -> {}), true);

    private static final CompletableFuture<Runnable> SPEAKS = new CompletableFuture<>();

    private ToolkitStart() {}

    static void begin() {
        Thread start = new Thread(ToolkitStart::beginHere, "toolkit start");
        start.setDaemon(true);
        start.start();
    }

    /** Says that the language of the desk is in force, and what may be made then, on the toolkit's thread. */
    static void speaks(Runnable first) {
        SPEAKS.complete(first);
    }

    private static void beginHere() {
        START.run();
        try {
            Runnable first = SPEAKS.get();
            START.get();
            Platform.runLater(first);
            loadAside();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException noToolkit) {
            // Whoever awaits it is told.
        }
    }

    /** What a first screen needs and any thread can load, while the toolkit's own makes the window. */
    private static void loadAside() {
        Fonts.load();
        Sign.load();
        // The names of days are the language's own, and long to find.
        new DayWords(ZoneOffset.UTC).longDay(Instant.EPOCH);
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
