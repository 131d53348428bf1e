package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.CareNote;
import org.moultwright.settings.TextSize;
import org.moultwright.text.SitterWords;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.workflow.BroodView;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The desk handed to a sitter, worked by the sitter by keyboard, opened anew, and taken back by the keeper. */
@ExtendWith(ApplicationExtension.class)
class SitterUiTest {
    private static final String BACK = "Take the last one back";

    @TempDir
    private Path folder;

    private Stage stage;
    private ShownDesk desk;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void open() {
        desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, "forecast");
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void aSitterCountsTheDeadGivesWaterAndTakesBackAndTheKeeperComesHome(FxRobot robot) throws TimeoutException {
        handOver(robot);
        BroodRecord before = record();
        press(robot, "One dead");
        ShownDesk.await(() -> dead() == dead(before) + 1);
        desk.awaitWords("Today: 1 dead");
        ctrl(robot, KeyCode.Z);
        ShownDesk.await(() -> dead() == dead(before));
        desk.awaitHolds(() -> said().startsWith("Taken back: A1, one dead."));
        press(robot, "Water given");
        ShownDesk.await(() -> waterings() == waterings(before) + 1);

        ctrl(robot, KeyCode.DIGIT2);
        robot.press(KeyCode.CONTROL).type(KeyCode.COMMA).release(KeyCode.CONTROL);
        assertThat(desk.words()).as("no key leads to another screen").contains(SitterWords.TITLE);

        desk.close();
        assertThat(Files.exists(folder.resolve("demo.store.sitter"))).isTrue();
        desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, "round");
        desk.awaitWords(SitterWords.TITLE);
        assertThat(desk.words()).contains("One dead").doesNotContain("Settings");
        assertThat(isRoundInSight()).isFalse();

        press(robot, "The keeper is back");
        desk.awaitWords("Are you the keeper?");
        press(robot, "No");
        ShownDesk.await(() -> !desk.words().contains("Are you the keeper?"));
        press(robot, "The keeper is back");
        press(robot, "Yes, take the desk back");
        ShownDesk.await(this::isRoundInSight);
        assertThat(Files.exists(folder.resolve("demo.store.sitter"))).isFalse();
    }

    /** A key that was held too long, or pressed once more, writes no death. */
    @Test
    void whatIsPressedAtFirstWritesNothing(FxRobot robot) {
        handOver(robot);
        int before = dead();
        robot.type(KeyCode.ENTER).type(KeyCode.SPACE);
        press(robot, "Water given");
        desk.awaitParts("Written down: ");
        assertThat(dead()).isEqualTo(before);
    }

    @Test
    void eachDeathIsSeenToBeTaken(FxRobot robot) throws TimeoutException {
        handOver(robot);
        int before = dead();
        for (int dead : List.of(1, 2)) {
            press(robot, "One dead");
            desk.awaitHolds(() -> said().startsWith("Written down: A1, one dead. Today: " + dead + " dead."));
            assertThat(desk.words()).contains("Today: " + dead + " dead");
        }
        press(robot, BACK);
        desk.awaitHolds(() -> said().startsWith("Taken back: A1, one dead. Today: 1 dead."));
        assertThat(desk.words()).contains("Today: 1 dead");
        ShownDesk.await(() -> dead() == before + 1);
    }

    @Test
    void whatWasWrittenIsTakenBackAfterTheDeskWasOpenedAnew(FxRobot robot) throws TimeoutException {
        handOver(robot);
        int before = dead();
        press(robot, "One dead");
        ShownDesk.await(() -> dead() == before + 1);
        desk.close();
        desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, "round");
        desk.awaitHolds(() -> said().startsWith("Written last: A1, one dead"));
        assertThat(ToolkitThread.ask(() -> stage.getScene().getFocusOwner()))
                .as("no key writes before the sitter chose")
                .isNotInstanceOf(Button.class);
        press(robot, BACK);
        ShownDesk.await(() -> dead() == before);
        desk.awaitHolds(() -> find(robot, BACK).get(0).isDisabled());
        ctrl(robot, KeyCode.Z);
        press(robot, "Water given");
        desk.awaitParts("Written down: ");
        assertThat(dead()).as("what the keeper wrote stays").isEqualTo(before);
    }

    @Test
    void theKeeperIsToldWhatWasWrittenMeanwhile(FxRobot robot) throws TimeoutException {
        handOver(robot);
        press(robot, "One dead");
        desk.awaitHolds(() -> said().contains("1 dead"));
        press(robot, "One dead");
        desk.awaitHolds(() -> said().contains("2 dead"));
        press(robot, "Water given");
        desk.awaitHolds(() -> said().contains("water"));
        press(robot, "The keeper is back");
        press(robot, "Yes, take the desk back");
        desk.awaitWords("The sitter wrote down: 2 dead (A1 2), water given once.");
        press(robot, "What was written");
        desk.awaitWords("Written down last");
        robot.type(KeyCode.ESCAPE);
        press(robot, "Close");
        ShownDesk.await(() -> !desk.words().contains("The sitter wrote down: 2 dead (A1 2), water given once."));
    }

    /** Neither what was pressed nor what is said of it leaves its place. */
    @Test
    void inTheLargestTextNothingJumpsAndAllIsInSight(FxRobot robot) {
        ToolkitThread.ask(() -> {
            desk.desk().appearance().textSizeProperty().unbind();
            desk.desk().appearance().textSizeProperty().set(TextSize.LARGEST);
            stage.setHeight(720);
            return stage;
        });
        handOver(robot);
        Button second = find(robot, "One dead").get(1);
        robot.interact(second::requestFocus);
        WaitForAsyncUtils.waitForFxEvents();
        Bounds before = ToolkitThread.ask(() -> place(second));
        robot.type(KeyCode.SPACE);
        desk.awaitHolds(() -> said().contains("1 dead"));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(ToolkitThread.ask(() -> place(second))).isEqualTo(before);
        assertThat(second.isFocused()).isTrue();
        for (Node node : List.of(
                second,
                find(robot, BACK).get(0),
                find(robot, "The keeper is back").get(0))) {
            Bounds at = ToolkitThread.ask(() -> place(node));
            assertThat(at.getMinY()).isPositive();
            assertThat(at.getMaxY()).isLessThanOrEqualTo(stage.getScene().getHeight());
        }
    }

    private boolean isRoundInSight() {
        return desk.words().stream().anyMatch(words -> words.endsWith(" done, next tray"));
    }

    private static Bounds place(Node node) {
        return node.localToScene(node.getLayoutBounds());
    }

    private String said() {
        return stage.getScene().lookup(".sitter-said") instanceof Labeled label ? label.getText() : "";
    }

    private void handOver(FxRobot robot) {
        press(robot, "Take along");
        press(robot, "Hand the desk over");
        desk.awaitWords("Hand the desk to a sitter?");
        press(robot, "Hand it over");
        desk.awaitWords(SitterWords.TITLE);
        desk.awaitWords(SitterWords.NEVER.stream().map("• "::concat).toList().get(1));
    }

    private void press(FxRobot robot, String words) {
        try {
            ShownDesk.await(() -> find(robot, words).size() > 0);
        } catch (TimeoutException late) {
            assertThat(desk.words()).contains(words);
        }
        Button button = find(robot, words).get(0);
        robot.interact(button::requestFocus);
        robot.type(KeyCode.SPACE);
    }

    private static List<Button> find(FxRobot robot, String words) {
        return robot
                .lookup((Button button) -> button.getText().equals(words) && isSeen(button))
                .queryAllAs(Button.class)
                .stream()
                .toList();
    }

    private static boolean isSeen(Node node) {
        return node.isVisible() && (node.getParent() == null || isSeen(node.getParent()));
    }

    private BroodRecord record() {
        return desk.desk().room().broods().stream()
                .filter(brood -> brood.trays().stream().anyMatch(tray -> tray.alive() > 0))
                .map(BroodView::record)
                .findFirst()
                .orElseThrow();
    }

    private int dead() {
        return dead(record());
    }

    private static int dead(BroodRecord record) {
        return record.ledger().balance(Account.DEAD);
    }

    private long waterings() {
        return waterings(record());
    }

    private static long waterings(BroodRecord record) {
        return record.care().stream()
                .filter(care -> care.what().equals(CareNote.WATERED))
                .count();
    }

    private static void ctrl(FxRobot robot, KeyCode key) {
        robot.press(KeyCode.CONTROL).type(key).release(KeyCode.CONTROL);
    }
}
