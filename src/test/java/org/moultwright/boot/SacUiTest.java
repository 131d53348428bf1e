package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A sac from its laying to its trays, by keyboard alone, on the whole desk over a store that was empty. */
@ExtendWith(ApplicationExtension.class)
class SacUiTest {
    private static final String CODE = "GP-26-A";

    @TempDir
    private Path folder;

    private final AtomicInteger keystrokes = new AtomicInteger();
    private Stage stage;
    private ShownDesk shown;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void openAnEmptyRoom(FxRobot robot) {
        open(robot);
    }

    @AfterEach
    void close() {
        shown.close();
    }

    @Test
    void aSacIsWrittenDownTakenOpenedAndTheOpeningTakenBack(FxRobot robot) throws TimeoutException {
        writeDown(robot);
        BroodView sac = room().brood(CODE).orElseThrow();
        assertThat(sac.record().runUp())
                .singleElement()
                .satisfies(event -> assertThat(event.note()).isEqualTo("F-7"));
        assertThat(sac.forecast().flatMap(BroodForecast::sac)).isPresent();

        robot.type(KeyCode.P).write("1 may").type(KeyCode.ENTER, KeyCode.ENTER);
        ShownDesk.await(() -> brood().flatMap(record -> record.brood().pulled()).isPresent());
        awaitThePage(robot);

        keystrokes.set(0);
        robot.type(KeyCode.O).type(KeyCode.ENTER);
        robot.write("112").type(KeyCode.ENTER, KeyCode.ENTER);
        robot.write("5")
                .type(KeyCode.ENTER)
                .write("2")
                .type(KeyCode.ENTER)
                .write("1")
                .type(KeyCode.ENTER);
        robot.type(KeyCode.ENTER).write("2");
        assertThat(robot.lookup("120 in the sac = 112 good + 5 infertile + 2 fused + 1 mouldy")
                        .tryQuery())
                .isPresent();
        assertThat(robot.lookup("112 good = 56 in A1 + 56 in A2").tryQuery()).isPresent();
        ctrl(robot, KeyCode.ENTER);
        assertThat(keystrokes.get()).isLessThanOrEqualTo(16);
        ShownDesk.await(() -> ledger().opened() == 120);
        assertThat(ledger().balance(Account.tray("A1"))).isEqualTo(56);
        assertThat(ledger().balance(Account.INFERTILE)).isEqualTo(5);
        assertThat(ledger().standing()).extracting(LedgerEntry::cause).contains(Cause.FUSED, Cause.MOULD);
        assertThat(room().shelf().stayOf("A2", room().now())).isPresent();
        assertThat(Files.exists(forms())).isFalse();
        awaitThePage(robot);

        ctrl(robot, KeyCode.Z);
        ShownDesk.await(() -> ledger().opened() == 0);
        RoomView back = room();
        assertThat(back.shelf().stayOf("A2", back.now())).isEmpty();
        assertThat(brood().flatMap(record -> record.brood().pulled())).isPresent();
        assertThat(back.brood(CODE).orElseThrow().forecast().flatMap(BroodForecast::sac))
                .isPresent();
    }

    @Test
    void anOpeningOfAnEarlierDayIsWrittenAndOneBeforeItsTimeRefused(FxRobot robot) throws TimeoutException {
        writeDown(robot);
        robot.type(KeyCode.P).write("1 may").type(KeyCode.ENTER, KeyCode.ENTER);
        ShownDesk.await(() -> brood().flatMap(record -> record.brood().pulled()).isPresent());
        awaitThePage(robot);
        robot.type(KeyCode.O).type(KeyCode.ENTER).write("60");
        TextField day = robot.lookup((TextField field) -> "day it was opened".equals(field.getAccessibleText()))
                .query();
        robot.clickOn(day).write("30 apr");
        ctrl(robot, KeyCode.ENTER);
        shown.awaitWords(CODE + " was taken from its mother after that. Write a later day.");
        assertThat(ledger().opened()).isZero();
        robot.clickOn(day).eraseText(6).write("2 may");
        ctrl(robot, KeyCode.ENTER);
        ShownDesk.await(() -> ledger().opened() == 60);
        Instant noon = LocalDate.of(2026, 5, 2)
                .atTime(LocalTime.NOON)
                .atZone(brood().orElseThrow().brood().zone())
                .toInstant();
        assertThat(ledger().standing()).extracting(LedgerEntry::at).containsOnly(noon);
        assertThat(brood().orElseThrow().checks())
                .singleElement()
                .satisfies(check -> assertThat(check.at()).isEqualTo(noon));
        assertThat(room().shelf().stayOf("A1", noon.minusSeconds(1))).isEmpty();
        assertThat(room().shelf().stayOf("A1", noon)).isPresent();
        awaitThePage(robot);
        ctrl(robot, KeyCode.Z);
        ShownDesk.await(() -> ledger().opened() == 0);
    }

    @Test
    void aCountThatDoesNotAddUpIsAskedOfBeforeAnythingIsSaved(FxRobot robot) throws TimeoutException {
        writeDown(robot);
        robot.type(KeyCode.O).type(KeyCode.ENTER).write("60").type(KeyCode.ENTER, KeyCode.ENTER);
        robot.type(KeyCode.ENTER, KeyCode.ENTER, KeyCode.ENTER).write("63");
        ctrl(robot, KeyCode.ENTER);
        ShownDesk.await(
                () -> robot.lookup("63 counted in all, 60 sorted. Count again, a miscount in all, or some gone?")
                        .tryQuery()
                        .isPresent());
        assertThat(ledger().opened()).isZero();
        WaitForAsyncUtils.waitForFxEvents();
        robot.type(KeyCode.G);
        ShownDesk.await(() -> ledger().opened() == 63);
        assertThat(ledger().balance(Account.MISSING)).isEqualTo(3);
    }

    @Test
    void aClutchIsWeighed(FxRobot robot) throws TimeoutException {
        writeDown(robot);
        robot.type(KeyCode.O);
        robot.clickOn("weighed");
        robot.clickOn((TextField field) -> "sample 1, animals counted".equals(field.getAccessibleText()));
        robot.write("40").type(KeyCode.ENTER).write("0.5").type(KeyCode.ENTER);
        robot.write("36").type(KeyCode.ENTER).write("0.5");
        robot.clickOn(
                (TextField field) -> String.valueOf(field.getAccessibleText()).startsWith("all good ones"));
        robot.write("3");
        // 76 animals in 1 g, 3 g of them.
        assertThat(robot.lookup("about 228").tryQuery()).isPresent();
        ctrl(robot, KeyCode.ENTER);
        ShownDesk.await(() -> ledger().opened() == 228);
        assertThat(ledger().standing()).singleElement().satisfies(entry -> {
            assertThat(entry.cause()).isEqualTo(Cause.ESTIMATED);
            assertThat(entry.note()).startsWith("about ").endsWith("95 %");
        });
        assertThat(brood().orElseThrow().checks()).isEmpty();
    }

    @Test
    void whatIsHalfTypedIsThereAgainAfterAKill(FxRobot robot) throws TimeoutException, IOException {
        ctrl(robot, KeyCode.N);
        robot.write("GP-26-").type(KeyCode.ENTER).write("Grammo");
        ShownDesk.await(() -> Files.exists(forms()) && Files.readString(forms()).contains("Grammo"));
        String asKilled = Files.readString(forms());
        close();
        assertThat(forms()).hasContent(asKilled);

        open(robot);
        robot.clickOn("Go on");
        assertThat(robot.lookup((TextField field) -> field.getText().equals("Grammo"))
                        .tryQuery())
                .isPresent();
        robot.clickOn("Start afresh");
        ShownDesk.await(() -> Files.notExists(forms()));
    }

    private void writeDown(FxRobot robot) throws TimeoutException {
        ctrl(robot, KeyCode.N);
        robot.write(CODE).type(KeyCode.ENTER).write("Grammostola pulchra").type(KeyCode.ENTER);
        robot.write("F-7")
                .type(KeyCode.ENTER)
                .write("12.4.")
                .type(KeyCode.ENTER)
                .write("13 apr");
        robot.type(KeyCode.ENTER, KeyCode.ENTER);
        ShownDesk.await(() -> brood().isPresent());
        awaitThePage(robot);
    }

    /** The list has the keyboard again, and the sac is the one chosen in it. */
    private void awaitThePage(FxRobot robot) throws TimeoutException {
        ShownDesk.await(() -> robot.lookup(CODE + ", its story").tryQuery().isPresent()
                && robot.lookup(".chart-list")
                        .tryQuery()
                        .filter(list -> list.isFocused())
                        .isPresent());
    }

    private RoomView room() {
        return shown.desk().room();
    }

    private Optional<BroodRecord> brood() {
        return room().brood(CODE).map(BroodView::record);
    }

    private Ledger ledger() {
        return brood().map(BroodRecord::ledger).orElse(Ledger.EMPTY);
    }

    private void open(FxRobot robot) {
        shown = ShownDesk.open(DeskRoom.EMPTY, folder, stage, "broods");
        robot.interact(() -> stage.getScene().addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (!event.getCode().isModifierKey()) {
                keystrokes.incrementAndGet();
            }
        }));
        WaitForAsyncUtils.waitForFxEvents();
        if (room().broods().isEmpty()) {
            Button first = robot.lookup((Button button) -> button.getText().equals("New sac") && isSeen(button))
                    .queryButton();
            robot.interact(first::requestFocus);
        }
    }

    private static boolean isSeen(Node node) {
        return node.isVisible() && (node.getParent() == null || isSeen(node.getParent()));
    }

    private Path forms() {
        return folder.resolve("empty.store.forms");
    }

    private static void ctrl(FxRobot robot, KeyCode key) {
        robot.press(KeyCode.CONTROL).type(key).release(KeyCode.CONTROL);
    }
}
