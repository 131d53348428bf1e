package org.moultwright.ui.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.moultwright.settings.TextSize;
import org.moultwright.settings.Theme;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.alarm.InventedWatch;
import org.moultwright.ui.shell.PageHost;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.RoomView;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** On a small display, and under an alarm in all but the largest text, what ends a sheet is in sight with its balance. */
@ExtendWith(ApplicationExtension.class)
class RoundInSightUiTest {
    private Stage stage;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @ParameterizedTest
    @EnumSource(value = TextSize.class, mode = EnumSource.Mode.EXCLUDE, names = "LARGEST")
    void doneAndTheBalance(TextSize size, FxRobot robot) throws TimeoutException {
        robot.interact(() -> {
            Scene scene = new Scene(RoundPictures.under(new InventedWatch().tooWarm(true).model), 1280, 720);
            new Appearance(Theme.LIGHT, size).dress(scene.getStylesheets());
            show(scene);
        });
        awaitInSight(() -> robot.lookup(".button.done").query());
        awaitInSight(() -> robot.lookup(
                        (Node node) -> node.getStyleClass().contains("banner") && node.getParent() instanceof RoundFoot)
                .query());
    }

    /** As the frame has it: the first page is shown once what it stands in has its skin. */
    @Test
    void theFirstFieldHasTheKeyboard(FxRobot robot) {
        RoundScreen screen = new RoundScreen(new InventedRoom().desk());
        robot.interact(() -> {
            PageHost frame = new PageHost();
            frame.setContent(screen.node());
            frame.skinProperty().addListener((observed, before, now) -> screen.shown());
            show(new Scene(frame, 1280, 720));
        });
        assertThat(stage.getScene().getFocusOwner().getAccessibleText()).isEqualTo("Nymph, looked");
    }

    @Test
    void withoutTraysThePageEndsAboveTheEdge(FxRobot robot) throws TimeoutException {
        InventedRoom empty = new InventedRoom();
        empty.room.set(RoomView.EMPTY);
        robot.interact(() -> {
            Scene scene = new Scene((Parent) new RoundScreen(empty.desk()).node(), 1280, 720);
            new Appearance(Theme.LIGHT, TextSize.NORMAL).dress(scene.getStylesheets());
            show(scene);
        });
        Supplier<Node> page = () -> robot.lookup(".round-columns").query();
        awaitInSight(page);
        assertThat(lowerEdge(page.get())).isBetween(680.0, 705.0);
    }

    /** Tests share a window, which one before may have left of another height. */
    private void show(Scene scene) {
        stage.setScene(scene);
        stage.sizeToScene();
        stage.show();
    }

    private static double lowerEdge(Node node) {
        return node.localToScene(node.getLayoutBounds()).getMaxY();
    }

    /** Where things stand is settled some frames after a window is shown. */
    private void awaitInSight(Supplier<Node> node) throws TimeoutException {
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> ToolkitThread.ask(() -> inSight(node.get())));
    }

    private boolean inSight(Node node) {
        Bounds at = node.localToScene(node.getLayoutBounds());
        return at.getHeight() > 0
                && at.getMinY() >= 0
                && at.getMaxY() <= stage.getScene().getHeight();
    }
}
