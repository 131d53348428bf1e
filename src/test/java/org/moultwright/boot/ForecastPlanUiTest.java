package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.DatePicker;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.ui.ScreenShots;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Planning on the demo room with the whole desk about it, by keyboard. */
@ExtendWith(ApplicationExtension.class)
class ForecastPlanUiTest {
    @TempDir
    private Path folder;

    private Stage stage;
    private ShownDesk desk;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void openTheDemo() {
        desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, "forecast");
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void anArrowTriesASetPointAndEscapeGoesBack(FxRobot robot) throws TimeoutException {
        String before = subtitle(robot);
        Slider slider = robot.lookup((Node node) -> node instanceof Slider).query();
        double asItIs = slider.getValue();
        robot.interact(slider::requestFocus);
        robot.type(KeyCode.RIGHT, 5);
        ShownDesk.await(() -> subtitle(robot).startsWith("What if: %.1f °C from now on.".formatted(asItIs + 0.5)));
        assertThat(desk.words()).anyMatch(words -> words.matches("At .* half of A1 would be slings .*"));
        ScreenShots.ofShown(
                "forecast-demo-what-if", stage.getScene(), desk.desk().appearance());
        robot.type(KeyCode.ESCAPE);
        ShownDesk.await(() -> subtitle(robot).equals(before));
        assertThat(slider.getValue()).isEqualTo(asItIs);
    }

    @Test
    void draggedFarItEndsWhereTheHandDoes(FxRobot robot) throws TimeoutException {
        Slider slider = robot.lookup((Node node) -> node instanceof Slider).query();
        robot.interact(() -> {
            for (double celsius = 22; celsius <= 30; celsius += 0.1) {
                slider.setValue(celsius);
            }
            slider.setValue(24.2);
        });
        ShownDesk.await(() -> subtitle(robot).startsWith("What if: 24.2 °C"));
    }

    @Test
    void daysAwayAreWeighedTrayByTray(FxRobot robot) {
        List<DatePicker> days =
                robot.lookup((Node node) -> node instanceof DatePicker).queryAllAs(DatePicker.class).stream()
                        .toList();
        robot.interact(() -> {
            days.get(0).setValue(LocalDate.of(2026, 5, 9));
            days.get(1).setValue(LocalDate.of(2026, 5, 16));
        });
        assertThat(desk.words())
                .contains("Away 9 to 16 May")
                .anyMatch(words ->
                        words.matches(".* that a tray needs hands while you are away: .* %(, give or take [0-9]+)?\\."))
                .anyMatch(words -> words.matches("[0-9]+ pots in all by .*"));
        ScreenShots.ofShown("forecast-demo-away", stage.getScene(), desk.desk().appearance());
    }

    private static String subtitle(FxRobot robot) {
        return robot.lookup(".page-subtitle").queryAllAs(Labeled.class).stream()
                .filter(ForecastPlanUiTest::isSeen)
                .map(Labeled::getText)
                .findFirst()
                .orElse("");
    }

    private static boolean isSeen(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }
}
