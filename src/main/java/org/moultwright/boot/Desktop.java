package org.moultwright.boot;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.moultwright.ui.theme.Appearance;

/** Opens the toolkit, shows a window, and waits until it is closed. */
final class Desktop {
    static final String TITLE = "Moultwright";

    private static final double REFUSAL_WIDTH = 640;

    private Desktop() {}

    /**
     * Shows a desk until its window is closed; the desk is closed with it. One whose store cannot be opened is taken away
     * again, the window left for whoever tells why.
     *
     * @param opening the window it takes over
     * @param desk makes the desk, on the toolkit's thread
     * @param whenShown is given the window once it is on screen
     * @throws IllegalStateException if the desk cannot be made, with the reason as its cause
     * @throws RuntimeException why the store of a desk that was shown cannot be opened
     */
    static void show(OpeningWindow opening, Supplier<Workbench> desk, Consumer<Shown> whenShown)
            throws InterruptedException {
        CompletableFuture<RuntimeException> refusal = new CompletableFuture<>();
        try {
            untilClosed(closed -> {
                Workbench workbench = desk.get();
                Stage stage = opening.handOver();
                workbench.whenRefused(fault -> {
                    if (stage.isShowing()) {
                        DeskWindow.takeAway(workbench, stage);
                        refusal.complete(fault);
                        closed.run();
                    }
                });
                DeskWindow.show(workbench, stage, closed);
                whenShown.accept(new Shown(workbench, stage));
            });
        } finally {
            if (!refusal.isDone()) {
                Platform.exit();
            }
        }
        if (refusal.isDone()) {
            throw refusal.join();
        }
    }

    /** Says why the desk cannot be opened, until that is closed; says nothing where there is no display. */
    static void refuse(RuntimeException fault, OpeningWindow opening) throws InterruptedException {
        try {
            untilClosed(closed -> {
                refusal(RefusedOpening.of(fault), closed).show();
                opening.close();
            });
        } catch (UnsupportedOperationException noDisplay) {
            fault.addSuppressed(noDisplay);
        } finally {
            Platform.exit();
        }
    }

    /** A small window with a refusal. */
    static Stage refusal(RefusedOpening refusal, Runnable whenClosed) {
        Stage stage = new Stage();
        // As high as its words are in that width.
        Scene scene = new Scene(new RefusalView(refusal, stage::close), REFUSAL_WIDTH, -1);
        new Appearance().dress(scene.getStylesheets());
        stage.setTitle(TITLE);
        stage.setScene(scene);
        stage.setOnHidden(event -> whenClosed.run());
        return stage;
    }

    private static void untilClosed(Consumer<Runnable> open) throws InterruptedException {
        ToolkitStart.await();
        CompletableFuture<Boolean> closed = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                open.accept(() -> closed.complete(true));
            } catch (RuntimeException fault) {
                closed.completeExceptionally(fault);
            }
        });
        try {
            closed.get();
        } catch (ExecutionException fault) {
            throw new IllegalStateException("the desk could not be opened", fault.getCause());
        }
    }

    /** A desk in its window. */
    record Shown(Workbench workbench, Stage stage) {}
}
