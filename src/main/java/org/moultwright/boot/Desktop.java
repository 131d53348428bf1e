package org.moultwright.boot;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.stage.Stage;

/** Opens the toolkit, shows the desk in a window, and waits until it is closed. */
final class Desktop {
    private Desktop() {}

    /**
     * Shows a desk until its window is closed; the desk is closed with it.
     *
     * @param title of the window
     * @param desk makes the desk, on the toolkit's thread
     * @param whenShown is given the window once it is on screen
     * @throws IllegalStateException if the desk cannot be made, with the reason as its cause
     */
    static void show(String title, Supplier<Workbench> desk, Consumer<Shown> whenShown) throws InterruptedException {
        CompletableFuture<Boolean> closed = new CompletableFuture<>();
        Platform.startup(() -> {
            try {
                Workbench workbench = desk.get();
                Stage stage = DeskWindow.show(workbench, title, () -> closed.complete(true));
                whenShown.accept(new Shown(workbench, stage));
            } catch (RuntimeException fault) {
                closed.completeExceptionally(fault);
            }
        });
        try {
            closed.get();
        } catch (ExecutionException fault) {
            throw new IllegalStateException("the desk could not be opened", fault.getCause());
        } finally {
            Platform.exit();
        }
    }

    /** A desk in its window. */
    record Shown(Workbench workbench, Stage stage) {}
}
