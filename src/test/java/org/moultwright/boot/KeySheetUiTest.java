package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.moultwright.settings.TextSize;
import org.moultwright.ui.ToolkitThread;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The keys of the round, which has the most of them, have room in the window, and leave the desk as it was. */
@ExtendWith(ApplicationExtension.class)
class KeySheetUiTest {
    @TempDir
    private Path folder;

    private Stage stage;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @ParameterizedTest
    @EnumSource
    void theDeskStaysInItsWindow(TextSize size, FxRobot robot) {
        try (ShownDesk desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, "round")) {
            ToolkitThread.ask(() -> {
                desk.desk().appearance().textSizeProperty().unbind();
                desk.desk().appearance().textSizeProperty().set(size);
                return size;
            });
            WaitForAsyncUtils.waitForFxEvents();
            Bounds before = ToolkitThread.ask(() -> bounds(".rail"));
            robot.type(KeyCode.F1);
            WaitForAsyncUtils.waitForFxEvents();
            desk.awaitWords("Everywhere");
            assertThat(ToolkitThread.ask(() -> isInWindow("Close"))).isTrue();
            assertThat(ToolkitThread.ask(() -> bounds(".rail"))).isEqualTo(before);
            robot.type(KeyCode.ESCAPE);
            WaitForAsyncUtils.waitForFxEvents();
            assertThat(ToolkitThread.ask(() -> bounds(".rail"))).isEqualTo(before);
        }
    }

    private Bounds bounds(String part) {
        return stage.getScene()
                .lookup(part)
                .localToScene(stage.getScene().lookup(part).getLayoutBounds());
    }

    private boolean isInWindow(String word) {
        List<Labeled> found = stage.getScene().getRoot().lookupAll(".button").stream()
                .map(Labeled.class::cast)
                .filter(button -> word.equals(button.getText()))
                .toList();
        return found.stream()
                .map(button -> button.localToScene(button.getLayoutBounds()))
                .anyMatch(at ->
                        at.getMinY() >= 0 && at.getMaxY() <= stage.getScene().getHeight() && at.getHeight() > 0);
    }
}
