package org.moultwright.boot;

import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.Scene;
import javafx.stage.Stage;
import javafx.util.Subscription;
import org.moultwright.ui.shell.WhileAtRest;

/** The window a desk stands in. */
final class DeskWindow {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;

    private DeskWindow() {}

    /** Shows a desk and has it read its room; the desk is closed with its window, before {@code whenClosed} is told. */
    static Stage show(Workbench workbench, String title, Runnable whenClosed) {
        Scene scene = new Scene(workbench.view(), WIDTH, HEIGHT);
        workbench.appearance().dress(scene.getStylesheets());
        Stage stage = new Stage();
        stage.setTitle(title);
        stage.setScene(scene);
        stage.setMinWidth(1024);
        stage.setMinHeight(640);
        stage.setOnHidden(event -> {
            workbench.close();
            whenClosed.run();
        });
        stage.show();
        afterFirstLayout(scene, workbench::readFirst);
        WhileAtRest atRest = new WhileAtRest(scene);
        onFirst(workbench.roomProperty(), () -> atRest.run(workbench.backstage()::step));
        return stage;
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
