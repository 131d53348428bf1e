package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.moultwright.settings.TextSize;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.shell.OverSheet;
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

    /** What is behind the sheet is not worked unseen, and what is below its foot is read without a mouse. */
    @Test
    void theKeyboardStaysOnTheSheetAndMovesIt(FxRobot robot) {
        try (ShownDesk desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, "round")) {
            ToolkitThread.ask(() -> {
                desk.desk().appearance().textSizeProperty().unbind();
                desk.desk().appearance().textSizeProperty().set(TextSize.LARGEST);
                stage.setHeight(720);
                return stage;
            });
            robot.type(KeyCode.F1);
            desk.awaitWords("Everywhere");
            desk.awaitHolds(() -> keys().isFocusTraversable());
            robot.type(KeyCode.DOWN);
            desk.awaitHolds(() -> keys().getVvalue() > 0);
            double aLine = keys().getVvalue();
            robot.type(KeyCode.PAGE_DOWN);
            desk.awaitHolds(() -> keys().getVvalue() > aLine);
            robot.type(KeyCode.END);
            desk.awaitHolds(() -> keys().getVvalue() == 1);
            robot.type(KeyCode.PAGE_UP);
            desk.awaitHolds(() -> keys().getVvalue() < 1);
            robot.type(KeyCode.HOME);
            desk.awaitHolds(() -> keys().getVvalue() == 0);
            for (KeyCode key :
                    List.of(KeyCode.TAB, KeyCode.TAB, KeyCode.TAB, KeyCode.LEFT, KeyCode.UP, KeyCode.RIGHT)) {
                robot.type(key);
                assertThat(isOnSheet(desk)).as("after %s", key).isTrue();
            }
            robot.press(KeyCode.SHIFT).type(KeyCode.TAB).type(KeyCode.TAB).release(KeyCode.SHIFT);
            assertThat(isOnSheet(desk)).as("after Shift and Tab").isTrue();
            robot.type(KeyCode.ESCAPE);
            desk.awaitHolds(() -> !isOnSheet(desk) && desk.focused().isPresent());
        }
    }

    private Scrolled keys() {
        return stage.getScene().getRoot().lookupAll(".scrolled").stream()
                .map(Scrolled.class::cast)
                .filter(scrolled -> "Keys".equals(scrolled.getAccessibleText()))
                .findFirst()
                .orElseThrow();
    }

    private static boolean isOnSheet(ShownDesk desk) {
        Node at = desk.focused().orElse(null);
        while (at != null && !(at instanceof OverSheet)) {
            at = at.getParent();
        }
        return at != null;
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
