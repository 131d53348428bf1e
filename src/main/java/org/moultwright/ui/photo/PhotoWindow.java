package org.moultwright.ui.photo;

import javafx.scene.Scene;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.moultwright.language.Texts;

/** The window a large photo stands in, over the desk and dressed as it is. */
final class PhotoWindow {
    private static final double SHARE = 0.9;

    private PhotoWindow() {}

    static void open(Scene desk, PhotoView view) {
        Stage stage = new Stage();
        Scene scene = new Scene(view, desk.getWidth() * SHARE, desk.getHeight() * SHARE);
        scene.getStylesheets().setAll(desk.getStylesheets());
        stage.initOwner(desk.getWindow());
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle(Texts.say("Photo"));
        stage.setScene(scene);
        view.whenClosed(stage::hide);
        stage.show();
        view.requestFocus();
    }
}
