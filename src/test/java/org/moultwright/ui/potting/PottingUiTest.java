package org.moultwright.ui.potting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.moultwright.ui.potting.ShownBench.field;
import static org.moultwright.ui.potting.ShownBench.says;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.UUID;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.document.PdfLabelPrinter;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Pot;
import org.moultwright.domain.code.PotCode;
import org.moultwright.domain.label.LabelDesign;
import org.moultwright.domain.label.LabelPart;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.LabelStack;
import org.moultwright.domain.label.Paper;
import org.moultwright.domain.label.PrintShift;
import org.moultwright.settings.TextSize;
import org.moultwright.store.H2Store;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.label.LabelWords;
import org.moultwright.ui.label.SheetDimension;
import org.moultwright.ui.print.Printers;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.MemoryBroodBook;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class PottingUiTest {
    @TempDir
    private static Path folder;

    private final Path file = folder.resolve(UUID.randomUUID() + ".store");
    private final H2Store store = H2Store.open(file);
    private final InventedTrays trays = new InventedTrays(store.book(), 22, 11);
    private final DrawnLabels printer = new DrawnLabels();
    private final Path pdf = folder.resolve("labels.pdf");
    private PottingScreen screen;
    private Appearance appearance;

    @Start
    void start(Stage stage) {
        screen = new PottingScreen(trays.desk(printer, pdf));
        appearance = ShownBench.show(screen, stage);
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void theBenchIsAsItWasOnceTheTextIsAsSmallAsItWas(FxRobot robot) {
        Region sheet = robot.lookup(".sheet-fields").queryAs(Region.class);
        double before = sheet.minWidth(-1);
        for (TextSize size : List.of(TextSize.LARGEST, TextSize.NORMAL)) {
            robot.interact(() -> appearance.textSizeProperty().set(size));
            WaitForAsyncUtils.waitForFxEvents();
        }
        robot.interact(() -> assertThat(sheet.minWidth(-1)).isEqualTo(before));
    }

    /** On a store on disk: what was acknowledged is there when it is opened again. */
    @Test
    void animalsGoIntoPotsByKeyboardAloneAndComeBackByUndo(FxRobot robot) {
        write(robot, "taken from A1", "20");
        write(robot, "died or lost from A2", "1");
        assertThat(says(robot, "31 taken = 30 potted + 1 dead or lost + 0 unexplained"))
                .isTrue();
        String leftOver = new PotCode("26A-031").text();
        assertThat(says(robot, "Destroy the label left over: " + leftOver + "."))
                .isTrue();
        robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
        assertThat(pdf).content().hasLineCount(31).startsWith(new PotCode("26A-001").text());
        assertThat(trays.balance(Account.POTTED)).isZero();

        robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        assertThat(trays.balance(Account.POTTED)).isEqualTo(30);
        assertThat(trays.balance(Account.DEAD)).isEqualTo(1);
        assertThat(trays.balance(Account.tray("A1"))).isEqualTo(36);
        assertThat(trays.balance(Account.tray("A2"))).isEqualTo(39);
        assertThat(trays.record().pots())
                .hasSize(30)
                .contains(new Pot(new PotCode("26A-021").text(), "A2", InventedTrays.NOW, "sling 5 May 26"))
                .noneMatch(pot -> pot.code().equals(leftOver));
        assertThat(field(robot, "taken from A1").getText()).isEqualTo("2");
        assertThat(field(robot, "first free label").getText()).isEqualTo("8");
        assertThat(trays.stacks)
                .last()
                .as("what a desk opened again begins with")
                .isEqualTo(new LabelStack(LabelSheets.A4_3X8, 8, PrintShift.NONE));

        Path asItWas = folder.resolve(UUID.randomUUID() + ".backup");
        store.backup(asItWas);
        try (H2Store reopened = H2Store.open(asItWas)) {
            assertThat(reopened.book().find(InventedTrays.BROOD).orElseThrow().pots())
                    .hasSize(30);
        }

        robot.interact(trays.undos.get(0));
        assertThat(trays.balance(Account.POTTED)).isZero();
        assertThat(trays.record().pots()).isEmpty();
        assertThat(field(robot, "taken from A1").getText()).isEqualTo("22");
        store.close();
        try (H2Store reopened = H2Store.open(file)) {
            BroodRecord record = reopened.book().find(InventedTrays.BROOD).orElseThrow();
            assertThat(record.pots()).isEmpty();
            assertThat(record.ledger().aliveInTrays()).isEqualTo(106);
        }
    }

    @Test
    void whatStandsOnTheLabelIsChosenAndKeptOncePotted(FxRobot robot) {
        robot.interact(() -> List.of("stage and day", "tray", "code square")
                .forEach(part -> robot.lookup(part).<ToggleButton>query().fire()));
        write(robot, "own words on the label", "back room");
        assertThat(trays.designs).isEmpty();
        robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        assertThat(trays.record().pots())
                .extracting(Pot::label)
                .startsWith("A1, back room")
                .endsWith("A2, back room");
        assertThat(trays.designs)
                .containsExactly(LabelDesign.STANDARD
                        .with(LabelPart.STAGE_AND_DAY, false)
                        .with(LabelPart.TRAY, true)
                        .with(LabelPart.SQUARE, false)
                        .withOwnWords("back room"));
    }

    @Test
    void labelsArePrintedSheetBySheet(FxRobot robot) {
        robot.press(KeyCode.CONTROL).type(KeyCode.P).release(KeyCode.CONTROL);
        assertThat(trays.paperPrinter.sheets)
                .hasSize(2)
                .allMatch(sheet -> sheet.widthPixels() == Math.round(Paper.A4.widthMillimetres() / 25.4 * 300));
        assertThat(trays.paperPrinter.jobs).isEqualTo(1);
        assertThat(says(robot, "2 sheets sent to the printer. Check that a label came out at its full size."))
                .isTrue();
        assertThat(trays.balance(Account.POTTED)).isZero();
    }

    @Test
    void aPrinterThatIsNotThereOrTakesNoMoreIsSaid(FxRobot robot) {
        trays.paperPrinter.paperThere = 1;
        robot.clickOn("Print");
        assertThat(says(robot, LabelWords.NOT_PRINTED)).isTrue();
        trays.paperPrinter.refusal = "It has no such paper.";
        robot.clickOn("Print");
        assertThat(says(robot, "It has no such paper.")).isTrue();
        trays.paperPrinter.unplugged = true;
        robot.clickOn("Print");
        assertThat(says(robot, Printers.NO_PRINTER)).isTrue();
    }

    /** What the keeper measured is not to be measured again because a printer was off. */
    @Test
    void theStackIsKeptHoweverTheLabelsFared(FxRobot robot) {
        write(robot, "first free label", "5");
        trays.paperPrinter.unplugged = true;
        robot.clickOn("Print");
        assertThat(trays.stacks).last().isEqualTo(new LabelStack(LabelSheets.A4_3X8, 5, PrintShift.NONE));
        write(robot, "first free label", "6");
        robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
        assertThat(trays.stacks).last().isEqualTo(new LabelStack(LabelSheets.A4_3X8, 6, PrintShift.NONE));
        write(robot, "first free label", "7");
        robot.clickOn("As PDF");
        assertThat(trays.stacks).last().isEqualTo(new LabelStack(LabelSheets.A4_3X8, 7, PrintShift.NONE));
    }

    @Test
    void ownDimensionsAreNamedWhereTheSheetIs(FxRobot robot) {
        ComboBox<?> sheet = robot.lookup(".sheet-choice").queryAs(ComboBox.class);
        assertThat(sheet.getButtonCell().getText()).isEqualTo(LabelSheets.A4_3X8.title());
        robot.clickOn("Own dimensions");
        assertThat(sheet.getButtonCell().getText()).isEqualTo("Own dimensions");
        robot.clickOn(toggle(robot, "Own dimensions"));
        assertThat(sheet.getButtonCell().getText()).isEqualTo(LabelSheets.A4_3X8.title());
    }

    private static Node toggle(FxRobot robot, String word) {
        return robot.lookup((Node node) ->
                        node instanceof ToggleButton chip && chip.getText().equals(word))
                .query();
    }

    /** What lies below the fold is not seen, and what ends the deed must be. */
    @Test
    void theBalanceAndWhatEndsTheDeedStayInSight(FxRobot robot) {
        for (TextSize size : TextSize.values()) {
            robot.interact(() -> appearance.textSizeProperty().set(size));
            robot.interact(() -> robot.window(0).setHeight(720));
            WaitForAsyncUtils.waitForFxEvents();
            Node balance = robot.lookup((Node node) ->
                            node instanceof Label words && words.getText().startsWith("33 taken"))
                    .query();
            Node done = robot.lookup((Node node) -> node instanceof Button button
                            && button.getStyleClass().contains("primary")
                            && button.isVisible())
                    .query();
            for (Node wanted : List.of(balance, done)) {
                Bounds at = wanted.localToScene(wanted.getLayoutBounds());
                assertThat(at.getMaxY())
                        .as("%s in %s", wanted, size)
                        .isLessThan(wanted.getScene().getHeight());
                assertThat(at.getMinY()).as("%s in %s", wanted, size).isPositive();
                assertThat(isScrolled(wanted))
                        .as("%s is scrolled in %s", wanted, size)
                        .isFalse();
            }
        }
    }

    private static boolean isScrolled(Node node) {
        for (Node around = node.getParent(); around != null; around = around.getParent()) {
            if (around instanceof Scrolled) {
                return true;
            }
        }
        return false;
    }

    @Test
    void aTrayMayGoIntoPotsOfAnotherSize(FxRobot robot) {
        write(robot, "pot size, on the label", "30 ml");
        write(robot, "pot size for A2", "60 ml");
        robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        assertThat(trays.record().pots())
                .filteredOn(pot -> pot.tray().equals("A2"))
                .hasSize(11)
                .allMatch(pot -> pot.size().equals("60 ml") && pot.label().equals("sling 5 May 26, 60 ml"));
        assertThat(trays.record().pots())
                .filteredOn(pot -> pot.tray().equals("A1"))
                .hasSize(22)
                .allMatch(pot -> pot.size().equals("30 ml"));
    }

    @Test
    void aCalibrationPageGoesWhereLabelsGo(FxRobot robot) {
        robot.clickOn("As PDF");
        assertThat(pdf).hasContent("calibration of A4, 3 × 8, 70 × 37 mm");
        robot.clickOn("On paper");
        assertThat(trays.paperPrinter.sheets).hasSize(1);
        assertThat(says(robot, LabelWords.CALIBRATION_PRINTED)).isTrue();
        trays.paperPrinter.paperThere = 1;
        robot.clickOn("On paper");
        assertThat(says(robot, LabelWords.NOT_PRINTED)).isTrue();
    }

    @Test
    void aSheetLargerThanItsPageIsSaid(FxRobot robot) {
        robot.interact(
                () -> robot.lookup("Own dimensions").<ToggleButton>query().fire());
        write(robot, "page width, mm", "60");
        assertThat(says(robot, "Labels 70 mm wide do not fit: they are at least 5 mm, and the page is 60 mm wide."))
                .isTrue();
        robot.interact(() -> robot.lookup("Letter").<Button>query().fire());
        assertThat(field(robot, "page width, mm").getText()).isEqualTo("215.9");
        write(robot, "page height, mm", "0");
        assertThat(says(robot, "A page is 10 to 1000 mm wide and high; there is at least one column and one row."))
                .isTrue();
    }

    @Test
    void thePotSizeStandsOnTheLabelAndInTheBook(FxRobot robot) {
        write(robot, "pot size, on the label", "30 ml");
        robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        assertThat(trays.record().pots())
                .hasSize(33)
                .allMatch(pot -> pot.label().equals("sling 5 May 26, 30 ml"));
    }

    @Test
    void aSheetOfOnesOwnIsLaidByItsDimensions(FxRobot robot) {
        robot.interact(
                () -> robot.lookup("Own dimensions").<ToggleButton>query().fire());
        assertThat(field(robot, "label width, mm").getText()).isEqualTo("70");
        write(robot, "columns", "2");
        write(robot, "rows", "5");
        write(robot, "label width, mm", "99,1");
        write(robot, "column to column, mm", "101.6");
        assertThat(robot.lookup(".label-cell").queryAll()).hasSize(10);
        assertThat(says(robot, "Sheet 1 of 4")).isTrue();
        write(robot, "row to row, mm", "20");
        assertThat(says(robot, "Labels overlap downwards: a label measures 37 mm and the next begins after 20 mm."))
                .isTrue();
        assertThat(button(robot, "Print").isDisabled()).isTrue();
        write(robot, "row to row, mm", "");
        assertThat(button(robot, "Save labels as PDF").isDisabled()).isTrue();
    }

    /** One and a half would else have been two without a word. */
    @Test
    void columnsAndRowsAreWholeNumbers(FxRobot robot) {
        robot.interact(
                () -> robot.lookup("Own dimensions").<ToggleButton>query().fire());
        for (String count : List.of("columns", "rows")) {
            robot.interact(() -> field(robot, count).replaceText(0, 1, "1.5"));
            assertThat(field(robot, count).getText()).isEqualTo(count.equals("columns") ? "3" : "8");
            assertThat(field(robot, count).getAccessibleHelp()).isEqualTo("Only a whole number up to 999.");
        }
    }

    /** The field is left before anybody has looked up. */
    @Test
    void whatMayNotBeWhatWasMeantIsSaidSoOfAlsoWhenItsFieldIsLeft(FxRobot robot) {
        TextField potted = field(robot, "really potted from A1");
        robot.interact(() -> {
            potted.requestFocus();
            potted.selectAll();
        });
        robot.write("1.5").type(KeyCode.TAB);
        assertThat(potted.isFocused()).isFalse();
        assertThat(potted.getAccessibleHelp()).isEqualTo("Only a whole number up to 99999.");
        write(robot, "really potted from A1", "21");
        assertThat(potted.getAccessibleHelp()).isEmpty();
    }

    @Test
    void nothingIsWrittenWhileTheBalanceDoesNotHold(FxRobot robot) {
        write(robot, "really potted from A1", "21");
        assertThat(says(robot, "33 taken = 32 potted + 0 dead or lost + 1 unexplained"))
                .isTrue();
        assertThat(button(robot, "Done, 32 in pots").isDisabled()).isTrue();
        robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        assertThat(trays.record().pots()).isEmpty();
        write(robot, "died or lost from A1", "1");
        assertThat(button(robot, "Done, 32 in pots").isDisabled()).isFalse();
    }

    @Test
    void whatIsWrongIsSaidUnderItsField(FxRobot robot) {
        write(robot, "taken from A1", "99");
        assertThat(says(robot, "A1 holds 56.")).isTrue();
        write(robot, "taken from A1", "22");
        write(robot, "first free label", "25");
        assertThat(says(robot, "1 to 24 on this sheet.")).isTrue();
        assertThat(button(robot, "Save labels as PDF").isDisabled()).isTrue();
        write(robot, "pattern of codes", "26l-{nnn}");
        assertThat(says(robot, "Leave out L: I, L, O and U look like 1, 0 and V, and are never part of a code."))
                .isTrue();
    }

    @Test
    void aClickOnTheSheetChoosesTheFirstFreeLabel(FxRobot robot) {
        Label fifth = robot.lookup(".label-cell").nth(4).query();
        robot.clickOn(fifth);
        assertThat(field(robot, "first free label").getText()).isEqualTo("5");
        assertThat(robot.lookup(".label-cell.used").queryAll()).hasSize(4);
        assertThat(says(robot, "Sheet 1 of 2")).isTrue();
        robot.type(KeyCode.PAGE_DOWN);
        assertThat(says(robot, "Sheet 2 of 2")).isTrue();
    }

    @Test
    void aFullDiskIsSaidWithTheRemedy(FxRobot robot) {
        printer.fillTheDisk();
        robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
        assertThat(says(robot, "Not saved: the disk is full. Free some space and save again. [DO-5]"))
                .isTrue();
    }

    /** With the true printer, so that what is looked at is what is printed. */
    @Test
    void looksAsItShould() {
        PdfLabelPrinter real = new PdfLabelPrinter();
        ScreenShots.of("potting", look -> {
            PottingViewModel model =
                    new PottingViewModel(new InventedTrays(new MemoryBroodBook(), 22, 11).desk(real, pdf));
            model.labels().sheets().common().form().firstCellProperty().set(OptionalInt.of(5));
            model.onBench()
                    .benchProperty()
                    .get()
                    .orElseThrow()
                    .takings()
                    .get(1)
                    .portions()
                    .get(0)
                    .lostProperty()
                    .set(OptionalInt.of(1));
            return new PottingView(model);
        });
        ScreenShots.of("potting-empty", look ->
                (Parent) new PottingScreen(new InventedTrays(new MemoryBroodBook(), 0, 0).desk(real, pdf)).node());
        ScreenShots.of("potting-wrong", look -> {
            PottingViewModel model =
                    new PottingViewModel(new InventedTrays(new MemoryBroodBook(), 22, 11).desk(real, pdf));
            model.form().patternProperty().set("26L-{nnn}");
            model.onBench()
                    .benchProperty()
                    .get()
                    .orElseThrow()
                    .takings()
                    .get(0)
                    .portions()
                    .get(0)
                    .pottedProperty()
                    .set(OptionalInt.of(19));
            return new PottingView(model);
        });
        ScreenShots.of("potting-own-sheet", 1188, 752, look -> {
            PottingViewModel model =
                    new PottingViewModel(new InventedTrays(new MemoryBroodBook(), 22, 11).desk(real, pdf));
            model.labels().sheets().common().form().own().usedProperty().set(true);
            model.labels()
                    .sheets()
                    .common()
                    .form()
                    .own()
                    .textProperty(SheetDimension.COLUMNS)
                    .set("2");
            model.form().potSizeProperty().set("30 ml");
            return new PottingView(model);
        });
        assertThat(Path.of("target", "screenshots", "potting-dark.png")).isNotEmptyFile();
    }

    private static void write(FxRobot robot, String field, String text) {
        robot.interact(() -> {
            field(robot, field).requestFocus();
            field(robot, field).selectAll();
        });
        robot.write(text);
    }

    private static Button button(FxRobot robot, String word) {
        return robot.lookup((Button button) -> word.equals(button.getText())).query();
    }
}
