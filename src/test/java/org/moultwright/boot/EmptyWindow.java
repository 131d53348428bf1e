package org.moultwright.boot;

import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;

/** The least there is to compare the desk's start with: the toolkit, and a window of the desk's size without anything in it. */
public final class EmptyWindow {
    /** What is said once it is on screen. */
    public static final String SHOWN = "shown";

    private EmptyWindow() {}

    public static void main(String[] arguments) {
        Platform.startup(() -> {
            Stage stage = new Stage();
            stage.setScene(new Scene(new Pane(), 1280, 800));
            stage.show();
            FirstFrame.say(SHOWN);
        });
    }
}
