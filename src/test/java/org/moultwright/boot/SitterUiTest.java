package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Button;
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
import org.moultwright.text.SitterWords;
import org.moultwright.workflow.BroodView;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The desk handed to a sitter, worked by the sitter by keyboard, opened anew, and taken back by the keeper. */
@ExtendWith(ApplicationExtension.class)
class SitterUiTest {
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
        desk.awaitWords("Taken back.");
        press(robot, "Water given");
        ShownDesk.await(() -> waterings() == waterings(before) + 1);

        ctrl(robot, KeyCode.DIGIT2);
        robot.press(KeyCode.CONTROL).type(KeyCode.COMMA).release(KeyCode.CONTROL);
        assertThat(desk.words()).as("no key leads to another screen").contains(SitterWords.TITLE);

        desk.close();
        assertThat(Files.exists(folder.resolve("demo.store.sitter"))).isTrue();
        desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, "round");
        desk.awaitWords(SitterWords.TITLE);
        assertThat(desk.words()).contains("One dead").doesNotContain("Done, next tray", "Settings");

        press(robot, "The keeper is back");
        desk.awaitWords("Are you the keeper?");
        press(robot, "No");
        ShownDesk.await(() -> !desk.words().contains("Are you the keeper?"));
        press(robot, "The keeper is back");
        press(robot, "Yes, take the desk back");
        ShownDesk.await(() -> desk.words().contains("Done, next tray"));
        assertThat(Files.exists(folder.resolve("demo.store.sitter"))).isFalse();
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
