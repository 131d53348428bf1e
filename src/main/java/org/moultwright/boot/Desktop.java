package org.moultwright.boot;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** Opens the toolkit, shows the desk in a window, and waits until it is closed. */
final class Desktop {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;

    private Desktop() {}

    /**
     * Shows a desk until its window is closed; the desk is closed with it.
     *
     * @param desk makes the desk, on the toolkit's thread
     * @param whenShown is given the window once it is on screen
     * @throws IllegalStateException if the desk cannot be made, with the reason as its cause
     */
    static void show(Supplier<Workbench> desk, Consumer<Shown> whenShown) throws InterruptedException {
        CompletableFuture<Boolean> closed = new CompletableFuture<>();
        Platform.startup(() -> {
            try {
                open(desk.get(), whenShown, closed);
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

    private static void open(Workbench workbench, Consumer<Shown> whenShown, CompletableFuture<Boolean> closed) {
        Scene scene = new Scene(workbench.view(), WIDTH, HEIGHT);
        workbench.appearance().dress(scene.getStylesheets());
        Stage stage = new Stage();
        stage.setTitle("Moultwright");
        stage.setScene(scene);
        stage.setMinWidth(1024);
        stage.setMinHeight(640);
        stage.setOnHidden(event -> {
            workbench.close();
            closed.complete(true);
        });
        stage.show();
        workbench.readAgain();
        whenShown.accept(new Shown(workbench, stage));
    }

    /** A desk in its window. */
    record Shown(Workbench workbench, Stage stage) {}
}
