package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.exchange.SheetDraftsFile;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A half-filled sheet of the demo room, the whole desk about it: on disk while it is typed, there again, then gone. */
@ExtendWith(ApplicationExtension.class)
class BegunSheetUiTest {
    private static final int LONGEST_SECONDS = 30;

    @TempDir
    private Path folder;

    private Stage stage;
    private OpenDesk desk;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void openTheDemo(FxRobot robot) {
        open(robot);
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(stage::hide);
        desk.close();
    }

    @Test
    void isThereAgainAndGoneOnceSaved(FxRobot robot) throws TimeoutException, IOException {
        robot.write("41").type(KeyCode.W);
        WaitForAsyncUtils.waitFor(1, TimeUnit.SECONDS, () -> isKept("41", "watered"));
        String asKilled = Files.readString(drafts());
        close(robot);
        assertThat(drafts()).hasContent(asKilled);

        open(robot);
        await(() -> robot.lookup((TextField field) -> field.getText().equals("41"))
                .tryQuery()
                .isPresent());
        robot.type(KeyCode.EQUALS).type(KeyCode.ENTER);
        await(() -> Files.notExists(drafts()));
    }

    @Test
    void oneNotUnderstoodIsSetAsideAndToldOf(FxRobot robot) throws IOException {
        close(robot);
        Files.writeString(drafts(), "{ torn");
        open(robot);
        assertThat(robot.lookup("The sheets begun last time could not be read.").tryQuery())
                .isPresent();
        assertThat(folder.resolve("demo.store.sheets.not-understood-1")).hasContent("{ torn");
    }

    private void open(FxRobot robot) {
        desk = DeskRoom.DEMO.open(folder);
        Parent view = desk.show("round");
        robot.interact(() -> {
            Scene scene = new Scene(view, 1280, 800);
            desk.appearance().dress(scene.getStylesheets());
            stage.setScene(scene);
            stage.show();
        });
        robot.clickOn(".stage-grid .text-field");
    }

    private boolean isKept(String... words) throws IOException {
        if (Files.notExists(drafts())) {
            return false;
        }
        assertThat(new SheetDraftsFile(drafts()).load().drafts()).hasSize(1);
        return Stream.of(words).allMatch(Files.readString(drafts())::contains);
    }

    private Path drafts() {
        return folder.resolve("demo.store.sheets");
    }

    private static void await(Callable<Boolean> condition) throws TimeoutException {
        WaitForAsyncUtils.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS, condition);
    }
}
