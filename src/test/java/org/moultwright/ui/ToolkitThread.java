package org.moultwright.ui;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import javafx.application.Platform;

/** The toolkit's thread as seen from a test's: asks there, and waits here. */
public final class ToolkitThread {
    private static final int LONGEST_SECONDS = 120;

    private ToolkitThread() {}

    public static <T> T ask(Supplier<T> work) {
        CompletableFuture<T> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                done.complete(work.get());
            } catch (RuntimeException | AssertionError fault) {
                done.completeExceptionally(fault);
            }
        });
        return await(done);
    }

    public static void run(Runnable work) {
        ask(() -> {
            work.run();
            return true;
        });
    }

    public static <T> T await(CompletableFuture<T> awaited) {
        try {
            return awaited.get(LONGEST_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        } catch (ExecutionException fault) {
            if (fault.getCause() instanceof AssertionError failed) {
                throw failed;
            }
            throw new IllegalStateException(fault);
        } catch (TimeoutException fault) {
            throw new IllegalStateException(fault);
        }
    }
}
