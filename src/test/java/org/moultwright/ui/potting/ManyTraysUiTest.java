package org.moultwright.ui.potting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.moultwright.ui.potting.ShownBench.field;
import static org.moultwright.ui.potting.ShownBench.says;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.UUID;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.document.PdfLabelPrinter;
import org.moultwright.domain.Account;
import org.moultwright.domain.Pot;
import org.moultwright.domain.code.CodePattern;
import org.moultwright.domain.code.PotCode;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.store.H2Store;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.workflow.MemoryBroodBook;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Three trays of two broods, slings of two sizes into pots of two sizes, all in one sitting. */
@ExtendWith(ApplicationExtension.class)
class ManyTraysUiTest {
    @TempDir
    private static Path folder;

    private final Path file = folder.resolve(UUID.randomUUID() + ".store");
    private final H2Store store = H2Store.open(file);
    private final InventedTrays trays = new InventedTrays(store.book(), 22, 11, 5);
    private final Path pdf = folder.resolve(UUID.randomUUID() + "/labels.pdf");
    private final DrawnLabels printer = new DrawnLabels();
    private int keystrokes;

    @Start
    void start(Stage stage) throws Exception {
        Files.createDirectories(pdf.getParent());
        PottingScreen screen = new PottingScreen(trays.desk(printer, pdf));
        ShownBench.show(screen, stage);
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void areDoneByKeyboardInOneDeedAndTakenBackByOne(FxRobot robot) {
        withControl(robot, KeyCode.D);
        write(robot, "10");
        press(robot, KeyCode.TAB);
        write(robot, "60 ml");
        press(robot, KeyCode.TAB, KeyCode.TAB, KeyCode.TAB, KeyCode.TAB);
        write(robot, "60 ml");
        press(robot, KeyCode.TAB);
        write(robot, "30 ml");
        assertThat(field(robot, "taken from CC-26-A A1").getText()).isEqualTo("12");
        assertThat(says(robot, "Into pots: 23 of 30 ml, 15 of 60 ml.")).isTrue();
        assertThat(says(robot, "38 taken = 38 potted + 0 dead or lost + 0 unexplained"))
                .isTrue();
        String codes =
                "%s to %s, %s to %s".formatted(code("26A-001"), code("26A-033"), code("26B-001"), code("26B-005"));
        assertThat(says(robot, codes)).isTrue();
        withControl(robot, KeyCode.S);
        assertThat(pdf).content().hasLineCount(38);
        withControl(robot, KeyCode.ENTER);
        assertThat(keystrokes).as("keystrokes").isEqualTo(26);

        assertThat(store.book().latestDeeds(1).get(0).words()).isEqualTo("38 potted");
        assertThat(trays.record().pots())
                .hasSize(33)
                .filteredOn(pot -> pot.size().equals("60 ml"))
                .hasSize(10);
        assertThat(trays.record(InventedTrays.SECOND).pots())
                .hasSize(5)
                .allMatch(pot -> pot.size().equals("60 ml"));
        assertThat(trays.record(InventedTrays.SECOND).ledger().balance(Account.POTTED))
                .isEqualTo(5);
        assertThat(store.check().problems()).isEmpty();

        robot.interact(trays.undos.get(0));
        assertThat(trays.balance(Account.POTTED)).isZero();
        assertThat(trays.record(InventedTrays.SECOND).pots()).isEmpty();
        assertThat(store.check().problems()).isEmpty();
        assertThat(field(robot, "taken from CC-26-B B1").getText()).isEqualTo("5");
    }

    @Test
    void aBroodIsTakenOffTheBenchAndPutOnIt(FxRobot robot) {
        fire(robot, InventedTrays.BROOD);
        assertThat(field(robot, "taken from B1").getText()).isEqualTo("5");
        assertThat(says(robot, "5 taken = 5 potted + 0 dead or lost + 0 unexplained"))
                .isTrue();
        fire(robot, InventedTrays.SECOND);
        assertThat(field(robot, "taken from B1").getText())
                .as("the last one stays")
                .isEqualTo("5");
        type(robot, "taken from B1", "4");
        fire(robot, InventedTrays.BROOD);
        assertThat(field(robot, "taken from CC-26-B B1").getText()).isEqualTo("4");
        assertThat(says(robot, "37 taken = 37 potted + 0 dead or lost + 0 unexplained"))
                .isTrue();
    }

    /** The sheet of the large pots was begun before; each goes on with its own first free label. */
    @Test
    void eachSizeMayHaveItsOwnSheet(FxRobot robot) {
        trays.areNamedAsProposed = true;
        type(robot, "pot size for CC-26-B B1", "60 ml");
        type(robot, "pot size, on the label", "30 ml");
        fire(robot, "60 ml");
        fire(robot, "On a sheet of their own");
        type(robot, "first free label", "23");
        robot.interact(robot.lookup("Save labels as PDF").queryButton()::fire);
        String small = "labels-" + code("26A-001") + "-to-" + code("26A-033") + ".pdf";
        String large = "labels-" + code("26B-001") + "-to-" + code("26B-005") + ".pdf";
        assertThat(says(
                        robot,
                        "Labels saved: " + small + ", " + large + ". Print at full size, without fitting to the page."))
                .isTrue();
        assertThat(pdf.resolveSibling(large)).content().hasLineCount(5);
        robot.interact(robot.lookup("Print").queryButton()::fire);
        assertThat(says(robot, "4 sheets sent to the printer. Check that a label came out at its full size."))
                .isTrue();
        withControl(robot, KeyCode.ENTER);
        robot.interact(trays.undos.get(0));
        type(robot, "pot size for CC-26-B B1", "60 ml");
        assertThat(field(robot, "first free label").getText())
                .as("of the small pots")
                .isEqualTo("10");
        fire(robot, "60 ml");
        assertThat(field(robot, "first free label").getText())
                .as("of the large pots")
                .isEqualTo("4");
    }

    @Test
    void theSameFileForTwoKindsOfSheetsIsRefused(FxRobot robot) {
        type(robot, "pot size for CC-26-B B1", "60 ml");
        fire(robot, "60 ml");
        fire(robot, "On a sheet of their own");
        withControl(robot, KeyCode.S);
        assertThat(
                        says(
                                robot,
                                "Not saved: labels.pdf was chosen for two kinds of sheets. Save again and give each its own name."))
                .isTrue();
        assertThat(pdf).doesNotExist();
    }

    @Test
    void codesAreMadeByThePatternWhichIsKeptOncePotted(FxRobot robot) {
        type(robot, "pattern of codes", "{taxon}{yyyy}-{tray}-{nn}");
        String codes = "%s to %s, %s to %s, %s to %s"
                .formatted(
                        code("CC2026-A1-01"),
                        code("CC2026-A1-22"),
                        code("CC2026-A2-01"),
                        code("CC2026-A2-11"),
                        code("CC2026-B1-01"),
                        code("CC2026-B1-05"));
        assertThat(says(robot, codes)).isTrue();
        assertThat(trays.settled).isEmpty();
        withControl(robot, KeyCode.ENTER);
        assertThat(trays.settled).containsExactly(new CodePattern("{taxon}{yyyy}-{tray}-{nn}"));
        assertThat(trays.record(InventedTrays.SECOND).pots())
                .extracting(Pot::code)
                .startsWith(code("CC2026-B1-01"))
                .allMatch(code -> PotCode.read(code).symbols().isPresent());
    }

    /** By the true printer: on a lid of 18 mm the letters would be too small to read. */
    @Test
    void codesTooLongForTheLabelAreSaidAtTheirPattern(FxRobot robot) {
        PottingViewModel model = ToolkitThread.ask(() -> new PottingViewModel(
                new InventedTrays(new MemoryBroodBook(), 22, 11, 5).desk(new PdfLabelPrinter(), pdf)));
        robot.interact(() -> {
            model.labels()
                    .sheets()
                    .common()
                    .form()
                    .sheetProperty()
                    .set(LabelSheets.find("a4-9x13-round18").orElseThrow());
            model.form().patternProperty().set("{yyyy}{taxon}{brood}-{tray}-{nnnnn}");
        });
        assertThat(model.form().patternProblemProperty().get())
                .isEqualTo(
                        code("2026CCA-A1-00001")
                                + " is too long for this label: its letters would be less than 1 mm high."
                                + " Choose a sheet with larger labels, make the codes shorter, or leave parts off the label. [DO-7]");
        assertThat(model.labels().jobsProperty().get()).isEmpty();
        robot.interact(
                () -> model.labels().sheets().common().form().sheetProperty().set(LabelSheets.A4_3X8));
        assertThat(model.form().patternProblemProperty().get()).isEmpty();
        assertThat(model.labels().jobsProperty().get()).hasSize(1);
    }

    /** With the true printer, so that what is looked at is what is printed. */
    @Test
    void looksAsItShould() {
        for (int width : List.of(1188, 1828)) {
            ScreenShots.of("potting-many-" + width, width, width == 1188 ? 752 : 1032, look -> many());
        }
        assertThat(Path.of("target", "screenshots", "potting-many-1188-dark.png"))
                .isNotEmptyFile();
    }

    private PottingView many() {
        PottingViewModel model = new PottingViewModel(
                new InventedTrays(new MemoryBroodBook(), 22, 11, 5).desk(new PdfLabelPrinter(), pdf));
        model.form().potSizeProperty().set("30 ml");
        Bench bench = model.onBench().benchProperty().get().orElseThrow();
        model.addSize(bench.takings().get(0));
        Portion large = bench.takings().get(0).portions().get(1);
        large.takenProperty().set(OptionalInt.of(10));
        large.potSizeProperty().set("60 ml");
        bench.takings().get(2).portions().get(0).potSizeProperty().set("60 ml");
        return new PottingView(model);
    }

    private void press(FxRobot robot, KeyCode... keys) {
        robot.type(keys);
        keystrokes += keys.length;
    }

    private void write(FxRobot robot, String text) {
        robot.write(text);
        keystrokes += text.length();
    }

    private void withControl(FxRobot robot, KeyCode key) {
        robot.press(KeyCode.CONTROL).type(key).release(KeyCode.CONTROL);
        keystrokes++;
    }

    private static void fire(FxRobot robot, String word) {
        robot.interact(() -> robot.lookup((ToggleButton button) -> word.equals(button.getText()))
                .<ToggleButton>query()
                .fire());
    }

    private static void type(FxRobot robot, String field, String text) {
        robot.interact(() -> field(robot, field).setText(text));
    }

    private static String code(String stem) {
        return new PotCode(stem).text();
    }
}
