package org.moultwright.ui.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.Account;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.Stage;
import org.moultwright.settings.TextSize;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.theme.Appearance;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class RoundUiTest {
    private final InventedRoom room = new InventedRoom();
    private final AtomicInteger keystrokes = new AtomicInteger();
    private RoundScreen screen;
    private StackPane host;

    @Start
    void start(javafx.stage.Stage stage) {
        screen = new RoundScreen(room.desk());
        host = new StackPane(screen.node());
        Scene scene = new Scene(host, 1280, 800);
        new Appearance().dress(scene.getStylesheets());
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (!event.getCode().isModifierKey()) {
                keystrokes.incrementAndGet();
            }
        });
        stage.setScene(scene);
        stage.show();
        screen.shown();
    }

    @Test
    void onALargeDisplayTheSheetIsLarger(FxRobot robot) {
        Region field = robot.lookup(".big-entry").queryAs(Region.class);
        double before = field.getWidth();
        robot.interact(() -> {
            StackPane large = new StackPane();
            Scene scene = new Scene(large, 1828, 1032);
            new Appearance().dress(scene.getStylesheets());
            host.getChildren().clear();
            large.getChildren().add(screen.node());
            scene.snapshot(null);
        });
        assertThat(field.getWidth()).isGreaterThan(before * 1.15);
    }

    @Test
    void anUnchangedTrayTakesTwoKeystrokes(FxRobot robot) {
        robot.type(KeyCode.EQUALS).type(KeyCode.ENTER);
        assertThat(keystrokes).hasValue(2);
        Check check = room.lastCheck("CC-26-A");
        assertThat(check.tray()).isEqualTo("A1");
        assertThat(check.at()).isEqualTo(InventedRoom.NOW);
        assertThat(check.looks())
                .isEqualTo(Map.of(
                        Stage.EGG, new Look.None(),
                        Stage.POSTEMBRYO, new Look.None(),
                        Stage.INSTAR1, new Look.Seen(),
                        Stage.DARKENED, new Look.Seen(),
                        Stage.INSTAR2, new Look.None()));
        assertThat(robot.lookup(".sheet .tray-name").queryLabeled().getText()).isEqualTo("A2");
    }

    /** C1 held 65: 30 eggs with legs, 30 nymphs, 3 dark and 1 sling are counted, 1 nymph is dead. */
    @Test
    void fourStagesOneDeadAndMouldTakeAtMostSixteenKeystrokes(FxRobot robot) {
        openC1(robot);
        keystrokes.set(0);
        digits(robot, "30").type(KeyCode.ENTER);
        digits(robot, "30").type(KeyCode.ENTER);
        digits(robot, "3").type(KeyCode.ENTER);
        digits(robot, "1");
        robot.type(KeyCode.D).type(KeyCode.DIGIT3).type(KeyCode.F);
        robot.type(KeyCode.M).type(KeyCode.S).type(KeyCode.ENTER);
        assertThat(keystrokes.get()).isEqualTo(15).isLessThanOrEqualTo(16);
        Check check = room.lastCheck("CC-26-C");
        assertThat(check.counted(Stage.POSTEMBRYO)).hasValue(30);
        assertThat(check.total()).hasValue(64);
        LedgerEntry dead = newest("CC-26-C");
        assertThat(dead.to()).isEqualTo(Account.DEAD);
        assertThat(dead.cause()).isEqualTo(Cause.FAILED_MOULT);
        assertThat(dead.stage()).isEqualTo(Stage.INSTAR1);
        MouldNote mould = room.record("CC-26-C").mould().get(0);
        assertThat(List.of(mould.where(), mould.extent(), mould.action()))
                .containsExactly("shells", "speck", "removed");
    }

    @Test
    void partialLooksAreWrittenByKeyboard(FxRobot robot) {
        openC1(robot);
        robot.write("7/20").type(KeyCode.ENTER).write("s").type(KeyCode.ENTER).write("n");
        robot.type(KeyCode.W);
        robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        assertThat(room.lastCheck("CC-26-C").looks())
                .isEqualTo(Map.of(
                        Stage.POSTEMBRYO, new Look.Sample(7, 20),
                        Stage.INSTAR1, new Look.Seen(),
                        Stage.DARKENED, new Look.None()));
        assertThat(room.record("CC-26-C").care()).extracting(CareNote::what).containsExactly(CareNote.WATERED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3.5", "3,5", "-5"})
    void whatIsNoCountStaysAsItWasTypedAndIsNeverSaved(String typed, FxRobot robot) {
        openC1(robot);
        int looks = room.record("CC-26-C").checks().size();
        robot.write(typed).type(KeyCode.ENTER);
        assertThat(robot.lookup("A count is a whole number, such as 58.").tryQuery())
                .isPresent();
        robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        assertThat(robot.lookup("One look cannot be read yet. A count is a whole number, such as 58.")
                        .tryQuery())
                .isPresent();
        assertThat(room.record("CC-26-C").checks()).hasSize(looks);
        assertThat(robot.lookup((TextField field) -> field.getText().equals(typed))
                        .tryQuery())
                .isPresent();
    }

    @Test
    void animalsGoneAreAskedForAndBecomeAnEntry(FxRobot robot) {
        openC1(robot);
        robot.write("57").type(KeyCode.ENTER).write("7").type(KeyCode.ENTER, KeyCode.ENTER, KeyCode.ENTER);
        assertThat(robot.lookup("64 written, 65 expected. Recount, an earlier miscount, or one gone?")
                        .tryQuery())
                .isPresent();
        robot.type(KeyCode.G);
        LedgerEntry gone = newest("CC-26-C");
        assertThat(gone.to()).isEqualTo(Account.MISSING);
        assertThat(gone.count()).isEqualTo(1);
        assertThat(gone.cause()).isEqualTo(Cause.EATEN_OR_LOST);
    }

    @Test
    void moreThanExpectedIsAnEarlierMiscount(FxRobot robot) {
        openC1(robot);
        robot.write("58").type(KeyCode.ENTER).write("8").type(KeyCode.ENTER, KeyCode.ENTER, KeyCode.ENTER);
        robot.clickOn("Earlier miscount");
        LedgerEntry found = newest("CC-26-C");
        assertThat(found.from()).isEqualTo(Account.SAC);
        assertThat(found.cause()).isEqualTo(Cause.EARLIER_MISCOUNT);
        assertThat(room.record("CC-26-C").ledger().balance(Account.tray("C1"))).isEqualTo(66);
    }

    @Test
    void aCountFarFromTheExpectedIsAskedOfAndNotHeldUp(FxRobot robot) {
        robot.write("900").type(KeyCode.ENTER);
        assertThat(robot.lookup((Label label) -> label.getText().startsWith("Far from the ") && label.isManaged())
                        .tryQuery())
                .isPresent();
        robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        robot.type(KeyCode.E);
        assertThat(room.lastCheck("CC-26-A").counted(Stage.INSTAR1)).hasValue(900);
    }

    /** C1 has four fields. */
    @Test
    void theButtonNamesTheTrayItSaves(FxRobot robot) {
        assertThat(robot.lookup(".done").queryButton().getText()).isEqualTo("A1 done, next tray");
        robot.type(KeyCode.EQUALS).type(KeyCode.ENTER);
        assertThat(robot.lookup(".done").queryButton().getText()).isEqualTo("A2 done, next tray");
    }

    @Test
    void theButtonNamesTheKeyThatEndsTheSheetFromHere(FxRobot robot) {
        openC1(robot);
        assertThat(keyOfDone(robot)).isEqualTo("Ctrl + Enter");
        robot.type(KeyCode.ENTER, KeyCode.ENTER);
        assertThat(keyOfDone(robot)).isEqualTo("Ctrl + Enter");
        robot.type(KeyCode.ENTER);
        assertThat(keyOfDone(robot)).isEqualTo("Enter");
        robot.type(KeyCode.D, KeyCode.DIGIT3);
        assertThat(keyOfDone(robot)).as("Enter answers why it died").isEqualTo("Ctrl + Enter");
        robot.type(KeyCode.ENTER);
        assertThat(keyOfDone(robot)).isEqualTo("Enter");
        robot.type(KeyCode.J);
        assertThat(keyOfDone(robot)).as("Enter is a line of the note").isEqualTo("Ctrl + Enter");
        robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        robot.type(KeyCode.EQUALS);
        assertThat(keyOfDone(robot)).isEqualTo("Enter");
    }

    @Test
    void enterPressesTheButtonItStandsOnAndSavesNothing(FxRobot robot) {
        robot.write("34");
        robot.interact(() -> BegunSheetsTest.countElsewhere(room));
        robot.interact(robot.lookup("Drop this sheet").query()::requestFocus);
        robot.type(KeyCode.ENTER);
        assertThat(room.undos).as("of the sheet saved elsewhere alone").hasSize(1);
        assertThat(field(robot, "Nymph, looked")).isEmpty();
    }

    @Test
    void recountGoesBackToTheFields(FxRobot robot) {
        openC1(robot);
        robot.write("57").type(KeyCode.ENTER).write("7").type(KeyCode.ENTER, KeyCode.ENTER, KeyCode.ENTER);
        robot.type(KeyCode.R);
        assertThat(robot.lookup("Recount").tryQuery()).isEmpty();
        assertThat(room.record("CC-26-C").checks()).hasSize(1);
        robot.write("58").type(KeyCode.ENTER, KeyCode.ENTER, KeyCode.ENTER, KeyCode.ENTER);
        assertThat(room.lastCheck("CC-26-C").total()).hasValue(65);
    }

    @Test
    void undoLaysTheSheetOpenAgain(FxRobot robot) {
        openC1(robot);
        robot.write("57").type(KeyCode.ENTER).write("7").type(KeyCode.D, KeyCode.DIGIT3, KeyCode.M);
        robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        assertThat(room.record("CC-26-C").ledger().balance(Account.DEAD)).isEqualTo(1);
        robot.interact(room.undos.get(0));
        assertThat(room.record("CC-26-C").ledger().balance(Account.DEAD)).isZero();
        assertThat(room.record("CC-26-C").checks()).hasSize(1);
        assertThat(robot.lookup(".sheet .tray-name").queryLabeled().getText()).isEqualTo("C1");
        assertThat(field(robot, "Egg with legs, looked")).isEqualTo("57");
    }

    @Test
    void aHalfFilledSheetSurvivesAnotherTrayAndAnotherScreen(FxRobot robot) {
        robot.write("12");
        robot.type(KeyCode.PAGE_DOWN);
        assertThat(field(robot, "Nymph, looked")).isEmpty();
        robot.interact(() -> {
            host.getChildren().clear();
            room.readAgain();
            host.getChildren().setAll(screen.node());
            screen.shown();
        });
        robot.type(KeyCode.PAGE_UP);
        assertThat(field(robot, "Nymph, looked")).isEqualTo("12");
    }

    @Test
    void theSameFieldKeepsTheKeyboardFromTrayToTrayAndKnowsOnlyItsOwn(FxRobot robot) {
        TextField typedIn = (TextField) host.getScene().getFocusOwner();
        robot.write("12");
        robot.type(KeyCode.PAGE_DOWN);
        assertThat(host.getScene().getFocusOwner()).isSameAs(typedIn);
        assertThat(typedIn.getText()).isEmpty();
        assertThat(typedIn.isUndoable()).isFalse();
        robot.write("7");
        robot.type(KeyCode.PAGE_UP);
        assertThat(typedIn.getText()).isEqualTo("12");
    }

    @Test
    void aTallyCountsOneAKeyAndTakesTheLastBack(FxRobot robot) {
        openC1(robot);
        robot.type(KeyCode.T).type(KeyCode.DIGIT2, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT2);
        robot.type(KeyCode.BACK_SPACE);
        assertThat(field(robot, "Egg with legs, looked")).isEqualTo("2");
        assertThat(field(robot, "Nymph, looked")).isEqualTo("1");
        robot.type(KeyCode.T).type(KeyCode.DIGIT9);
        assertThat(field(robot, "Egg with legs, looked")).isEqualTo("9");
    }

    /** A key pressed by mistake on the loupe costs nothing that was written. */
    @Test
    void whatStoodThereBeforeATallyComesBackWithTheLastKey(FxRobot robot) {
        openC1(robot);
        robot.write("7/20").type(KeyCode.T).type(KeyCode.DIGIT2, KeyCode.DIGIT2, KeyCode.BACK_SPACE);
        assertThat(field(robot, "Egg with legs, looked")).isEqualTo("1");
        robot.type(KeyCode.BACK_SPACE);
        assertThat(field(robot, "Egg with legs, looked")).isEqualTo("7/20");
    }

    @Test
    void careAndNoteAreKeptWithTheLook(FxRobot robot) {
        robot.type(KeyCode.W, KeyCode.R, KeyCode.EQUALS, KeyCode.J).write("lid was ajar?");
        robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        assertThat(room.record("CC-26-A").care().stream().map(CareNote::what).collect(Collectors.toSet()))
                .isEqualTo(Set.of(CareNote.WATERED, CareNote.TURNED, CareNote.NOTED));
        assertThat(room.record("CC-26-A").care()).extracting(CareNote::note).contains("lid was ajar?");
    }

    @Test
    void anEmptySheetIsNotSaved(FxRobot robot) {
        robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        assertThat(robot.lookup("Nothing is written yet. Count, or press = if it looks as expected.")
                        .tryQuery())
                .isPresent();
        assertThat(room.undos).isEmpty();
    }

    @Test
    void theWholeRoundEndsWithAllDone(FxRobot robot) {
        for (int tray = 0; tray < 4; tray++) {
            robot.type(KeyCode.EQUALS).type(KeyCode.ENTER);
        }
        assertThat(robot.lookup("All 4 trays are done for today.").tryQuery()).isPresent();
        assertThat(room.undos).hasSize(4);
    }

    @Test
    void theRoundIsPictured() {
        ScreenShots.of("round", look -> RoundPictures.counting());
        ScreenShots.of("round-mould", look -> RoundPictures.mouldAndDead());
        ScreenShots.of("round-question", look -> RoundPictures.unbalanced());
        ScreenShots.of("round-interrupted", look -> RoundPictures.interrupted());
        ScreenShots.of("round-far-off", look -> RoundPictures.farOff());
        ScreenShots.of("round-wide", 1920, 1080, look -> RoundPictures.counting());
        ScreenShots.of("round-large-text", 1280, 720, look -> {
            look.textSizeProperty().set(TextSize.LARGE);
            return RoundPictures.mouldAndDead();
        });
    }

    private static FxRobot digits(FxRobot robot, String digits) {
        return robot.write(digits);
    }

    private static String keyOfDone(FxRobot robot) {
        return robot.lookup(".done-keys > .wording").<Label>queryAll().stream()
                .filter(Label::isVisible)
                .map(Label::getText)
                .collect(Collectors.joining());
    }

    private static void openC1(FxRobot robot) {
        robot.type(KeyCode.PAGE_DOWN, KeyCode.PAGE_DOWN, KeyCode.PAGE_DOWN);
    }

    private LedgerEntry newest(String code) {
        List<LedgerEntry> entries = room.record(code).ledger().entries();
        return entries.get(entries.size() - 1);
    }

    private static String field(FxRobot robot, String name) {
        return robot.lookup((TextField field) -> name.equals(field.getAccessibleText()))
                .queryAs(TextField.class)
                .getText();
    }
}
