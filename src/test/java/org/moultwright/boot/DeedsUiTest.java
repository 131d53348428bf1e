package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.ui.ScreenShots;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** What was written down at the desk is taken back by the keyboard alone, another evening too. */
@ExtendWith(ApplicationExtension.class)
class DeedsUiTest {
    @TempDir
    private Path folder;

    private Stage stage;
    private ShownDesk desk;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void onAnotherEveningTheOlderOfTwoIsTakenBackWithThreeKeys(FxRobot robot) throws TimeoutException {
        open("round");
        robot.clickOn(".stage-grid .text-field");
        asExpected(robot);
        asExpected(robot);
        desk.close();
        open("round");
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        desk.awaitWords("C1 looked at");
        ScreenShots.ofShown("deeds", stage.getScene(), desk.desk().appearance());
        awaitList();
        robot.type(KeyCode.DOWN).type(KeyCode.ENTER);
        desk.awaitWords("Taken back: B1 looked at.");
        assertThat(desk.words()).contains("C1 looked at").doesNotContain("B1 looked at");
        robot.type(KeyCode.ESCAPE);
        ShownDesk.await(() -> !desk.words().contains("Written down last"));
    }

    @Test
    void whatALaterDeedRestsOnWaitsAndSaysForWhat(FxRobot robot) throws TimeoutException {
        open("shelf");
        ShownDesk.await(() -> stage.getScene().getFocusOwner() instanceof ListView<?> shelf
                && String.valueOf(shelf.getAccessibleText()).startsWith("A1, tray"));
        move(robot, "box 2");
        move(robot, "box 1");
        robot.press(KeyCode.CONTROL, KeyCode.SHIFT).type(KeyCode.Z).release(KeyCode.SHIFT, KeyCode.CONTROL);
        desk.awaitWords("A1 moved into box 2");
        awaitList();
        robot.type(KeyCode.DOWN).type(KeyCode.DELETE);
        desk.awaitWords(
                "Not taken back. 'A1 moved into box 1' was written later and rests on it. Take that back first.");
        robot.type(KeyCode.UP).type(KeyCode.ENTER);
        desk.awaitWords("Taken back: A1 moved into box 1.");
    }

    @Test
    void whereNothingWasWrittenThatIsSaid(FxRobot robot) {
        open("round");
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        desk.awaitWords("Nothing was written down at this desk yet.");
    }

    private void open(String screen) {
        desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, screen);
    }

    private static void asExpected(FxRobot robot) {
        robot.type(KeyCode.EQUALS).type(KeyCode.ENTER);
    }

    private void move(FxRobot robot, String box) throws TimeoutException {
        awaitList();
        robot.type(KeyCode.M).write(box).type(KeyCode.ENTER);
        desk.awaitWords("A1 moved into " + box + ".");
        desk.awaitWords("in " + box + " since 3 May");
    }

    private void awaitList() throws TimeoutException {
        ShownDesk.await(() -> stage.getScene().getFocusOwner() instanceof ListView<?>);
    }
}
