package org.moultwright.ui.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.boot.DeskRoom;
import org.moultwright.boot.ShownDesk;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.store.H2Store;
import org.moultwright.ui.ScreenShots;
import org.moultwright.workflow.InventedPots;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The register with 5 000 pots in the whole window over a store on disk, by keyboard and by a scanner that types. */
@ExtendWith(ApplicationExtension.class)
class RegisterUiTest {
    private static final String BROOD = "CC-26-A";

    @TempDir
    private Path folder;

    private Stage stage;
    private ShownDesk desk;
    private boolean closed;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void open() {
        desk = ShownDesk.open(DeskRoom.FIVE_THOUSAND_POTS, folder, stage, "register");
        awaitWords("5000 pots: 4235 alive, 500 dead, 265 handed over");
        // A field takes letters once it is laid out, which is after it has the focus.
        await(() -> desk.focused()
                .filter(TextField.class::isInstance)
                .map(TextField.class::cast)
                .filter(field -> field.getSkin() != null)
                .isPresent());
    }

    @AfterEach
    void close() {
        if (!closed) {
            desk.close();
        }
    }

    @Test
    void whatWasBegunInTheScanFieldIsTakenBackByEscape(FxRobot robot) {
        robot.write("26A-00");
        robot.type(KeyCode.ESCAPE);
        scan(robot, code(2));
        awaitWords(code(2) + ", " + BROOD + ", alive: 1 selected.");
    }

    /** A scanner goes on before anybody reads what was wrong. */
    @Test
    void aScanOnNoPotIsStillToldAfterTheNextOnes(FxRobot robot) {
        scan(robot, "26A-001-X");
        scan(robot, code(1));
        scan(robot, code(2));
        awaitWords(code(2) + ", " + BROOD + ", alive: 2 selected. 1 scan before it was on no pot.");
        robot.type(KeyCode.ESCAPE);
        scan(robot, code(2));
        awaitWords(code(2) + ", " + BROOD + ", alive: 1 selected.");
    }

    @Test
    void aRunOfScansIsFedWithOneKeyAndTakenBackWithOne(FxRobot robot) {
        scan(robot, code(1));
        awaitWords(code(1) + ", " + BROOD + ", alive: 1 selected.");
        robot.type(KeyCode.DOWN);
        await(() -> desk.focused().filter(PotTable.class::isInstance).isPresent());
        scan(robot, code(2));
        awaitWords(code(2) + ", " + BROOD + ", alive: 2 selected.");
        scan(robot, code(2).toLowerCase(Locale.ROOT));
        awaitWords(code(2) + " was scanned already and counts once: 2 selected.");
        scan(robot, code(10));
        awaitWords(code(10) + ", " + BROOD + ", dead: 3 selected.");
        String wrong = code(3).substring(0, code(3).length() - 1) + (code(3).endsWith("A") ? "B" : "A");
        scan(robot, wrong);
        awaitWords("'" + wrong + "' is misread: its last character does not fit the rest. Scan or type it again.");
        scan(robot, InventedPots.codeOf("26Z", 7));
        awaitWords(InventedPots.codeOf("26Z", 7) + " is a whole code, but no pot of this register has it.");
        scan(robot, "A1");
        awaitWords("'A1' is too short: a pot code is like 26A-001-D.");

        press(robot, KeyCode.F);
        awaitWords("2 pots fed. 1 passed over, dead or handed over.", "5000 pots shown");
        press(robot, KeyCode.Z);
        awaitWords("Taken back: 2 pots fed.", "2 selected of 5000 pots shown");
        press(robot, KeyCode.M);
        awaitWords("2 pots moulted.");
        BroodRecord kept = reopened();
        assertThat(kept.potEvents())
                .filteredOn(event -> event.at().equals(DeskRoom.evening()))
                .hasSize(2)
                .allMatch(event -> event.what() == What.MOULTED);
    }

    @Test
    void whatIsFilteredIsHandedOverWithOneKeyAndTheLedgerAgrees(FxRobot robot) {
        robot.type(KeyCode.F3).write("26a-00 alive").type(KeyCode.ENTER);
        awaitWords("9 pots shown");
        robot.press(KeyCode.CONTROL, KeyCode.SHIFT).type(KeyCode.H).release(KeyCode.SHIFT, KeyCode.CONTROL);
        awaitWords("9 pots handed over.", "5000 pots: 4226 alive, 500 dead, 274 handed over");
        assertThat(reopened().ledger().balance(Account.HANDED_OVER)).isEqualTo(53 + 9);
    }

    /** Of the 1 000 pots of a brood 100 are dead and 53 handed over. */
    @Test
    void whateverHappensToAllSelectedIsOneKeyAndSoIsTakingItBack(FxRobot robot) {
        robot.type(KeyCode.F3).write("26a alive").type(KeyCode.ENTER);
        awaitWords("847 pots shown");
        press(robot, KeyCode.A);
        awaitWords("847 selected");
        Map<KeyCode, String> events =
                Map.of(KeyCode.F, "fed", KeyCode.M, "moulted", KeyCode.D, "dead", KeyCode.H, "handed over");
        events.forEach((key, word) -> {
            press(robot, key);
            awaitWords("847 pots " + word + ".");
            press(robot, KeyCode.Z);
            awaitWords("Taken back: 847 pots " + word + ".", "847 selected of 847 pots shown");
        });
        BroodRecord kept = reopened();
        assertThat(kept.ledger().balance(Account.POTTED)).isEqualTo(847);
        assertThat(kept.potEvents()).noneMatch(event -> event.at().equals(DeskRoom.evening()));
    }

    @Test
    void aDeathIsWrittenFromTheRowLookedAt(FxRobot robot) {
        robot.type(KeyCode.DOWN, KeyCode.DOWN);
        awaitWords("27 days in its pot", "alive, instar 3");
        press(robot, KeyCode.D);
        awaitWords(code(2) + " dead.", "dead, instar 3");
        robot.type(KeyCode.SPACE)
                .press(KeyCode.SHIFT)
                .type(KeyCode.DOWN, KeyCode.DOWN)
                .release(KeyCode.SHIFT);
        awaitWords("3 selected of 5000 pots shown");
        robot.type(KeyCode.ESCAPE);
        awaitWords("the one looked at, of 5000 pots shown");
        assertThat(reopened().ledger().balance(Account.DEAD)).isEqualTo(101);
    }

    @Test
    void looksAsItShould() {
        ScreenShots.of("register-selected", 1188, 752, look -> RegisterPictures.selected());
        ScreenShots.of("register-misread", 1188, 752, look -> RegisterPictures.misread());
        ScreenShots.of("register-labels", 1188, 752, look -> RegisterPictures.labels());
        ScreenShots.of("register-labels-refused", 1188, 752, look -> RegisterPictures.labelsRefused());
        ScreenShots.of("register-slip", 1188, 752, look -> RegisterPictures.slip());
        assertThat(Path.of("target", "screenshots", "register-selected-dark.png"))
                .isNotEmptyFile();
    }

    private BroodRecord reopened() {
        desk.close();
        closed = true;
        try (H2Store store = H2Store.open(folder.resolve(DeskRoom.FIVE_THOUSAND_POTS.key() + ".store"))) {
            assertThat(store.check().problems()).isEmpty();
            return store.book().find(BROOD).orElseThrow();
        }
    }

    private static String code(int number) {
        return InventedPots.codeOf("26A", number);
    }

    /** A scanner types wherever the keyboard is, and ends with Enter. */
    private static void scan(FxRobot robot, String code) {
        robot.write(code).type(KeyCode.ENTER);
    }

    private static void press(FxRobot robot, KeyCode key) {
        robot.press(KeyCode.CONTROL).type(key).release(KeyCode.CONTROL);
    }

    private void awaitWords(String... parts) {
        desk.awaitParts(parts);
    }

    private void await(Supplier<Boolean> condition) {
        desk.awaitHolds(condition);
    }
}
