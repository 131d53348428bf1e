package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.exchange.DraftsFile;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A half-filled sheet of the demo room, the whole desk about it: on disk while it is typed, there again, then gone. */
@ExtendWith(ApplicationExtension.class)
class BegunSheetUiTest {
    @TempDir
    private Path folder;

    private Stage stage;
    private ShownDesk desk;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void openTheDemo(FxRobot robot) {
        open(robot);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void isThereAgainAndGoneOnceSaved(FxRobot robot) throws TimeoutException, IOException {
        robot.write("41").type(KeyCode.W);
        WaitForAsyncUtils.waitFor(1, TimeUnit.SECONDS, () -> isKept("41", "watered"));
        String asKilled = Files.readString(drafts());
        close();
        assertThat(drafts()).hasContent(asKilled);

        open(robot);
        ShownDesk.await(() -> robot.lookup((TextField field) -> field.getText().equals("41"))
                .tryQuery()
                .isPresent());
        robot.type(KeyCode.EQUALS).type(KeyCode.ENTER);
        ShownDesk.await(() -> Files.notExists(drafts()));
    }

    @Test
    void oneNotUnderstoodIsSetAsideAndToldOf(FxRobot robot) throws IOException {
        close();
        Files.writeString(drafts(), "{ torn");
        open(robot);
        assertThat(robot.lookup("The sheets begun last time could not be read.").tryQuery())
                .isPresent();
        assertThat(folder.resolve("demo.store.sheets.not-understood-1")).hasContent("{ torn");
    }

    private void open(FxRobot robot) {
        desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, "round");
        robot.clickOn(".stage-grid .text-field");
    }

    private boolean isKept(String... words) throws IOException {
        if (Files.notExists(drafts())) {
            return false;
        }
        assertThat(DraftsFile.ofSheets(drafts()).load().drafts()).hasSize(1);
        return Stream.of(words).allMatch(Files.readString(drafts())::contains);
    }

    private Path drafts() {
        return folder.resolve("demo.store.sheets");
    }
}
