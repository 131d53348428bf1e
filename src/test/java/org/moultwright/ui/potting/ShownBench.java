package org.moultwright.ui.potting;

import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.moultwright.ui.theme.Appearance;
import org.testfx.api.FxRobot;

/** The potting bench in a window, and what is found on it. */
final class ShownBench {
    private ShownBench() {}

    static Appearance show(PottingScreen screen, Stage stage) {
        Appearance appearance = new Appearance();
        Scene scene = new Scene(new StackPane(screen.node()), 1280, 800);
        appearance.dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
        screen.shown();
        return appearance;
    }

    static TextField field(FxRobot robot, String name) {
        return robot.lookup((TextField field) -> name.equals(field.getAccessibleText()))
                .query();
    }

    static boolean says(FxRobot robot, String sentence) {
        return robot.lookup((Label label) -> sentence.equals(label.getText()))
                .tryQuery()
                .isPresent();
    }
}
