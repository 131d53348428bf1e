package org.moultwright.ui.shelf;

import java.nio.file.Path;
import javafx.scene.control.Button;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.boot.DeskRoom;
import org.moultwright.boot.ShownDesk;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The first container stands on the shelf without a hand on the mouse. */
@ExtendWith(ApplicationExtension.class)
class EmptyShelfUiTest {
    @TempDir
    private Path folder;

    private Stage stage;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @Test
    void theFirstContainerIsAddedByKeyboard(FxRobot robot) {
        try (ShownDesk desk = ShownDesk.open(DeskRoom.EMPTY, folder, stage, "shelf")) {
            desk.awaitHolds(
                    () -> desk.focused().filter(Button.class::isInstance).isPresent());
            robot.type(KeyCode.A);
            desk.awaitHolds(
                    () -> desk.focused().filter(TextField.class::isInstance).isPresent());
            robot.type(KeyCode.ESCAPE);
            desk.awaitHolds(
                    () -> desk.focused().filter(Button.class::isInstance).isPresent());
            robot.type(KeyCode.ENTER);
            desk.awaitHolds(
                    () -> desk.focused().filter(TextField.class::isInstance).isPresent());
            robot.write("INC-1").type(KeyCode.ENTER);
            desk.awaitParts("INC-1 added.", "stands in nothing");
            desk.awaitHolds(
                    () -> desk.focused().filter(ListView.class::isInstance).isPresent());
        }
    }
}
