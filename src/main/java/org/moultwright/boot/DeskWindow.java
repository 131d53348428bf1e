package org.moultwright.boot;

import javafx.scene.Scene;
import javafx.stage.Stage;

/** The window a desk stands in. */
final class DeskWindow {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;

    private DeskWindow() {}

    /** Shows a desk and has it read its room; the desk is closed with its window, before {@code whenClosed} is told. */
    static Stage show(Workbench workbench, String title, Runnable whenClosed) {
        workbench.readFirst();
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
        return stage;
    }
}
