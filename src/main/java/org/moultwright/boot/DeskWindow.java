package org.moultwright.boot;

import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import javafx.util.Subscription;
import org.moultwright.ui.shell.WhileAtRest;

/** The window a desk stands in. */
final class DeskWindow {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double LEAST_WIDTH = 1024;
    private static final double LEAST_HEIGHT = 640;

    /** What the machine may lay around a window: a title, and edges. More than most do; common practice, no source. */
    private static final double FRAME = 48;

    private DeskWindow() {}

    /** A window for a desk, as {@link #stage(String, WindowFile)}, its place not kept. */
    static Stage stage(String title) {
        return stage(title, WindowFile.NONE);
    }

    /**
     * A window for a desk, with an empty floor in it. It stands where the last one stood when it was closed; where the
     * screens there are now do not show that, it takes the whole of one it would not fit on.
     */
    static Stage stage(String title, WindowFile kept) {
        Stage stage = new Stage();
        stage.setTitle(title);
        stage.setScene(new Scene(new StackPane(), WIDTH, HEIGHT));
        stage.setMinWidth(LEAST_WIDTH);
        stage.setMinHeight(LEAST_HEIGHT);
        Optional<WindowPlace> last = kept.read().filter(DeskWindow::canBeSeen);
        last.ifPresentOrElse(place -> put(stage, place), () -> {
            Rectangle2D room = Screen.getPrimary().getVisualBounds();
            stage.setMaximized(room.getWidth() < WIDTH + FRAME || room.getHeight() < HEIGHT + FRAME);
        });
        stage.addEventHandler(
                WindowEvent.WINDOW_HIDING, closing -> place(stage, last).ifPresent(kept::keep));
        return stage;
    }

    private static boolean canBeSeen(WindowPlace place) {
        return place.fits(Screen.getScreens().stream()
                        .map(Screen::getVisualBounds)
                        .toList())
                && place.bounds().getWidth() >= LEAST_WIDTH
                && place.bounds().getHeight() >= LEAST_HEIGHT;
    }

    private static void put(Stage stage, WindowPlace place) {
        stage.setX(place.bounds().getMinX());
        stage.setY(place.bounds().getMinY());
        stage.setWidth(place.bounds().getWidth());
        stage.setHeight(place.bounds().getHeight());
        stage.setMaximized(place.isMaximized());
    }

    /** A maximised window does not tell what it was before; it goes back to where the last one stood. */
    private static Optional<WindowPlace> place(Stage stage, Optional<WindowPlace> last) {
        if (stage.isMaximized()) {
            return Optional.of(new WindowPlace(last.map(WindowPlace::bounds).orElseGet(DeskWindow::usualBounds), true));
        }
        return stage.isIconified()
                ? last
                : Optional.of(new WindowPlace(
                        new Rectangle2D(stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight()), false));
    }

    private static Rectangle2D usualBounds() {
        Rectangle2D room = Screen.getPrimary().getVisualBounds();
        double width = Math.min(WIDTH, room.getWidth());
        double height = Math.min(HEIGHT, room.getHeight());
        return new Rectangle2D(room.getMinX(), room.getMinY(), width, height);
    }

    /**
     * Shows a desk and has it read its room.
     *
     * @param stage where it is to stand, on screen or not
     * @param whenClosed is told once the desk was closed, which is done when its window is
     */
    static Stage show(Workbench workbench, Stage stage, Runnable whenClosed) {
        Scene scene = stage.getScene();
        // The other way round all of it would be styled twice.
        workbench.appearance().dress(scene.getStylesheets());
        LaterParts later = new LaterParts(workbench.canWait());
        floor(scene).getChildren().setAll(workbench.view());
        stage.setOnHidden(event -> {
            workbench.close();
            whenClosed.run();
        });
        stage.show();
        // A window that was on screen waits for its next frame with this.
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        afterFirstLayout(scene, workbench::readFirst);
        later.start();
        WhileAtRest atRest = new WhileAtRest(scene);
        onFirst(workbench.roomProperty(), () -> atRest.run(workbench.backstage()::step));
        return stage;
    }

    /** Closes a desk whose store cannot be opened, and leaves its window, empty. */
    static void takeAway(Workbench workbench, Stage stage) {
        stage.setOnHidden(null);
        floor(stage.getScene()).getChildren().clear();
        workbench.close();
    }

    /** What is on it changes; styles that were worked out for it are worked out anew for another. */
    static StackPane floor(Scene scene) {
        return (StackPane) scene.getRoot();
    }

    /** What the keeper sees first comes first; the dates are worked out after it. */
    private static void afterFirstLayout(Scene scene, Runnable work) {
        Runnable[] listening = new Runnable[1];
        listening[0] = () -> {
            scene.removePostLayoutPulseListener(listening[0]);
            work.run();
        };
        scene.addPostLayoutPulseListener(listening[0]);
        Platform.requestNextPulse();
    }

    /** Screens are of a room that was read; one made ready before would have to be made ready anew. */
    private static void onFirst(ReadOnlyObjectProperty<?> property, Runnable work) {
        Subscription[] listening = new Subscription[1];
        listening[0] = property.subscribe((before, now) -> {
            listening[0].unsubscribe();
            work.run();
        });
    }
}
