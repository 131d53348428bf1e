package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The command for alarms is tried from the settings of the opened desk, and how it ended is said beside it. */
@ExtendWith(ApplicationExtension.class)
@EnabledOnOs(OS.LINUX)
class AlarmReachUiTest {
    @TempDir
    private Path folder;

    private Stage stage;
    private ShownDesk desk;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void openTheSettings() {
        desk = ShownDesk.open(DeskRoom.EMPTY, folder, stage, "settings");
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void aCommandIsRunWithItsWordsAndItsEndIsSaid(FxRobot robot) throws Exception {
        Path told = folder.resolve("told");
        tryOut(robot, "printf %s \"$MOULTWRIGHT_WORDS\" > '" + told + "'");
        desk.awaitWords("It ran and ended well. Look whether what you expect has happened.");
        assertThat(Files.readString(told)).isEqualTo("This is only a test.");
    }

    @Test
    void aCommandThatFailsIsToldToFail(FxRobot robot) throws TimeoutException {
        tryOut(robot, "exit 3");
        desk.awaitWords("It failed: it ended with 3. Try it in a terminal.");
    }

    private static void tryOut(FxRobot robot, String command) {
        TextField field = robot.lookup((Node node) ->
                        node instanceof TextField text && "command to run at an alarm".equals(text.getAccessibleText()))
                .query();
        robot.interact(() -> field.setText(command));
        Button button = robot.lookup((Node node) -> node instanceof Button found && "Try it".equals(found.getText()))
                .query();
        robot.interact(button::fire);
    }
}
