package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.ui.ToolkitThread;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A round of more trays than the list beside it has room for. */
@ExtendWith(ApplicationExtension.class)
class RoundOfManyTraysUiTest {
    private static final int TRAYS = 12;

    private Stage stage;
    private ShownDesk shown;

    @Start
    void start(Stage stage) {
        this.stage = stage;
    }

    @AfterEach
    void close() {
        shown.close();
    }

    @Test
    void theOpenTrayIsInSightHoweverFarDown(@TempDir Path folder, FxRobot robot) throws Exception {
        shown = ShownDesk.open(DeskRoom.SIX_HUNDRED, folder, stage, "round");
        ShownDesk.await(() -> isInSight("L01"));
        for (int step = 1; step < TRAYS; step++) {
            robot.type(KeyCode.PAGE_DOWN);
        }
        ShownDesk.await(() -> isInSight("L12"));
        assertThat(isInSight("L01")).isFalse();
        for (int step = 1; step < TRAYS; step++) {
            robot.type(KeyCode.PAGE_UP);
        }
        ShownDesk.await(() -> isInSight("L01"));
    }

    private boolean isInSight(String tray) {
        return ToolkitThread.ask(() -> {
            Node list = stage.getScene().lookup(".tray-list .list-view");
            Optional<Bounds> row = list.lookupAll(".tray-row").stream()
                    .map(Button.class::cast)
                    .filter(button -> button.getAccessibleText().startsWith("tray " + tray))
                    .map(button -> button.localToScene(button.getLayoutBounds()))
                    .findFirst();
            return row.filter(list.localToScene(list.getLayoutBounds())::contains)
                    .isPresent();
        });
    }
}
