package org.moultwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.domain.code.CodeRun;
import org.moultwright.domain.code.PotCode;
import org.moultwright.domain.code.TakenCodes;
import org.moultwright.domain.label.Box;
import org.moultwright.domain.label.LabelShape;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.Paper;
import org.moultwright.domain.label.PrintShift;
import org.moultwright.workflow.CalibrationPage;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PagePicture;
import org.moultwright.workflow.PotLabel;

class PdfLabelPrinterTest {
    private static final Instant MADE_AT = Instant.parse("2026-05-05T20:41:00Z");
    private static final double ONE_PIXEL_MILLIMETRES = 25.4 / 300;

    private final PdfLabelPrinter printer = new PdfLabelPrinter();

    @TempDir
    private Path folder;

    static Stream<LabelSheet> sheets() {
        return LabelSheets.all().stream();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everyCodeOfEverySheetReadsBack(LabelSheet sheet) {
        int count = sheet.cells() + 3;
        LabelJob job = job(sheet, 5, count, PrintShift.NONE);
        PrintedSheets printed = PrintedSheets.of(saved(job), 300);

        assertThat(printed.count()).isEqualTo(2);
        List<String> read = new ArrayList<>();
        for (int page = 0; page < printed.count(); page++) {
            for (int cell = 1; cell <= sheet.cells(); cell++) {
                printed.decode(page, sheet.cell(cell)).ifPresent(read::add);
            }
        }
        assertThat(read).containsExactlyElementsOf(codes(job));
        assertThat(printed.text()).contains(codes(job)).contains("C. cyaneopubescens", "sling 5 May 26");
    }

    @Test
    void aWholePageReadsAtOnce() {
        LabelJob job = job(LabelSheets.A4_3X8, 1, 24, PrintShift.NONE);
        assertThat(PrintedSheets.of(saved(job), 200).decodeAll(0)).containsExactlyInAnyOrderElementsOf(codes(job));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void inkStaysOnItsLabel(LabelSheet sheet) {
        PrintedSheets printed = PrintedSheets.of(saved(job(sheet, 2, sheet.cells() - 1, PrintShift.NONE)), 300);
        assertThat(printed.ink(0, sheet.cell(1))).isEmpty();
        for (int cell = 2; cell <= sheet.cells(); cell++) {
            Box label = sheet.cell(cell);
            Box ink = printed.ink(0, label).orElseThrow();
            assertThat(ink.leftMillimetres()).isGreaterThan(label.leftMillimetres() + ONE_PIXEL_MILLIMETRES);
            assertThat(ink.topMillimetres()).isGreaterThan(label.topMillimetres() + ONE_PIXEL_MILLIMETRES);
            assertThat(ink.rightMillimetres()).isLessThan(label.rightMillimetres() - ONE_PIXEL_MILLIMETRES);
            assertThat(ink.bottomMillimetres()).isLessThan(label.bottomMillimetres() - ONE_PIXEL_MILLIMETRES);
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void labelsRepeatAtTheSheetsPitchWithinAFifthOfAMillimetre(LabelSheet sheet) {
        PrintedSheets printed = PrintedSheets.of(saved(job(sheet, 1, sheet.cells(), PrintShift.NONE)), 300);
        Box first = printed.ink(0, sheet.cell(1)).orElseThrow();
        for (int cell = 1; cell <= sheet.cells(); cell++) {
            Box ink = printed.ink(0, sheet.cell(cell)).orElseThrow();
            int column = (cell - 1) % sheet.columns();
            int row = (cell - 1) / sheet.columns();
            assertThat(ink.leftMillimetres() - first.leftMillimetres())
                    .isCloseTo(column * sheet.pitchXMillimetres(), within(0.2));
            assertThat(ink.topMillimetres() - first.topMillimetres())
                    .isCloseTo(row * sheet.pitchYMillimetres(), within(0.2));
        }
    }

    @Test
    void printShiftMovesEverything() {
        LabelSheet sheet = LabelSheets.all().get(1);
        Box cell = sheet.cell(11);
        Box plain = PrintedSheets.of(saved(job(sheet, 11, 1, PrintShift.NONE)), 300)
                .ink(0, cell)
                .orElseThrow();
        Box moved = PrintedSheets.of(saved(job(sheet, 11, 1, new PrintShift(0.4, -1.5))), 300)
                .ink(0, cell)
                .orElseThrow();
        assertThat(moved.leftMillimetres() - plain.leftMillimetres()).isCloseTo(0.4, within(0.2));
        assertThat(moved.topMillimetres() - plain.topMillimetres()).isCloseTo(-1.5, within(0.2));
    }

    @Test
    void modulesAreWholePrinterDotsAndAsLargeAsTheLabelAllows() {
        int modules = CodeSquare.qr("26A-001-D").sizeWithQuietZone();
        assertThat(modules).isEqualTo(29);
        // The published least module for QR of GS1 is 0.396 mm; only the 10 mm label is too low for it.
        for (LabelSheet sheet : LabelSheets.all()) {
            LabelLayout layout = LabelLayout.of(sheet.cell(1), LabelShape.RECTANGLE, modules);
            double least = sheet.labelHeightMillimetres() == 10 ? 4 * ONE_PIXEL_MILLIMETRES : 0.396;
            assertThat(layout.moduleMillimetres()).as(sheet.title()).isGreaterThanOrEqualTo(least);
            double wider = (layout.moduleDots() + 1) * modules * PrinterDots.DOT_MILLIMETRES;
            assertThat(wider > sheet.labelHeightMillimetres() || wider > 0.45 * sheet.labelWidthMillimetres())
                    .as(sheet.title())
                    .isTrue();
        }
    }

    @Test
    void aLabelTooSmallForItsCodeIsRefusedWithARemedy() {
        LabelSheet tiny = new LabelSheet(Paper.A4.page(), 5, 20, 8, 5, 10, 10, 20, 7);
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> printer.save(job(tiny, 1, 1, PrintShift.NONE), folder.resolve("tiny.pdf")))
                .withMessage(
                        "A label of 8.0 × 5.0 mm is too small for this code. Choose a sheet with larger labels, make the codes shorter, or leave parts off the label. [DO-7]")
                .extracting(DocumentException::reason)
                .isEqualTo(DocumentException.Reason.LABEL_TOO_SMALL);
        assertThat(folder).isEmptyDirectory();
    }

    /** Down to the smallest labels there can be, a code that is too dense for QR is a Data Matrix. */
    @ParameterizedTest
    @CsvSource({"20, 7, false", "12, 5, false", "30, 20, true", "57, 32, true"})
    void theCodeIsChosenByTheRoomThereIs(double width, double height, boolean isQr) {
        LabelSheet sheet = new LabelSheet(Paper.A4.page(), 1, 1, width, height, 20, 20, width, height);
        LabelJob job = job(sheet, 1, 1, PrintShift.NONE);
        assertReads(job, isQr);
    }

    @ParameterizedTest
    @CsvSource({"40, true", "25, true", "18, true", "14, false", "11, false"})
    void onARoundLabelEverythingStaysInsideTheCircle(double across, boolean isQr) {
        LabelSheet sheet =
                new LabelSheet(Paper.A4.page(), 1, 1, across, across, 20, 20, across, across, LabelShape.ROUND);
        LabelJob job = job(sheet, 1, 1, PrintShift.NONE);
        assertReads(job, isQr);
        PrintedSheets printed = PrintedSheets.of(saved(job), 300);
        assertThat(printed.text()).contains(codes(job).get(0), "C. cyaneopubescens");
        double radius = across / 2;
        assertThat(printed.farthestInk(0, 20 + radius, 20 + radius)).isLessThan(radius);
    }

    @Test
    void aRollIsAPageALabel() {
        PrintedSheets printed = PrintedSheets.of(saved(job(LabelSheet.ofRoll(57, 32), 1, 3, PrintShift.NONE)), 300);
        assertThat(printed.count()).isEqualTo(3);
        assertThat(printed.decode(2, new Box(0, 0, 57, 32))).isPresent();
    }

    @ParameterizedTest
    @MethodSource("everySheet")
    void aCalibrationPageShowsTheLabelsWhereTheyWouldBePrinted(LabelSheet sheet) throws IOException {
        PrintShift shift = new PrintShift(1.5, -0.5);
        Path pdf = Files.createDirectories(Path.of("target", "sheets")).resolve("calibration-" + sheet.code() + ".pdf");
        printer.save(new CalibrationPage(sheet, shift, MADE_AT), pdf);
        PrintedSheets printed = PrintedSheets.of(pdf, 300);
        assertThat(printed.count()).isEqualTo(1);
        if (sheet.paper().widthMillimetres() > 120) {
            Box last = sheet.cell(sheet.cells()).moved(shift);
            Box around = new Box(
                    last.leftMillimetres() - 0.4,
                    last.topMillimetres() - 0.4,
                    last.widthMillimetres() / 2 + 0.8,
                    last.heightMillimetres() + 0.8);
            Box ink = printed.ink(0, around).orElseThrow();
            assertThat(ink.leftMillimetres()).isCloseTo(last.leftMillimetres(), within(0.45));
            assertThat(printed.text().replaceAll("\\s+", " "))
                    .contains("This line is 100 mm long", "right 1.5, down -0.5");
        }
        assertThat(printer.picture(new CalibrationPage(sheet, shift, MADE_AT), 420)
                        .widthPixels())
                .isBetween(419, 421);
    }

    static Stream<LabelSheet> everySheet() {
        return LabelSheets.everything().stream();
    }

    private void assertReads(LabelJob job, boolean isQr) {
        Box label = job.sheet().cell(1);
        PrintedSheets printed = PrintedSheets.of(saved(job), 300);
        String code = codes(job).get(0);
        if (isQr) {
            assertThat(printed.decode(0, label)).contains(code);
        } else {
            assertThat(printed.decode(0, label)).isEmpty();
            int across = CodeSquare.dataMatrix(code).sizeWithQuietZone();
            Box square = LabelLayout.of(label, job.sheet().shape(), across).square();
            assertThat(printed.decodeDataMatrix(0, square)).contains(code);
        }
    }

    @Test
    void theSameJobGivesTheSameBytes() throws IOException {
        LabelJob job = job(LabelSheets.A4_3X8, 5, 33, PrintShift.NONE);
        Path first = printerSaved(job, "first.pdf");
        Path second = printerSaved(job, "second.pdf");
        assertThat(first).hasSameBinaryContentAs(second);
        assertThat(Files.size(first)).isBetween(8_000L, 120_000L);
    }

    @Test
    void awkwardWordsStillPrint() {
        PotLabel label = new PotLabel("an old code, 17/β", "Grammostola difficilis", "猫 moulted");
        LabelJob job = new LabelJob(LabelSheets.A4_3X8, 1, PrintShift.NONE, List.of(label), MADE_AT);
        PrintedSheets printed = PrintedSheets.of(saved(job), 300);
        assertThat(printed.text()).contains("an old code, 17/β", "G. difficilis", "? moulted");
        assertThat(printed.decode(0, LabelSheets.A4_3X8.cell(1))).contains("an old code, 17/β");
    }

    /** On one row these words would be half as high. */
    @Test
    void manyWordsStandInSeveralRows() {
        PotLabel label = new PotLabel("26A-001-D", "", "sling 5 May 26, 30 ml, CC-26-A, tray A1");
        LabelJob job = new LabelJob(LabelSheets.A4_3X8, 1, PrintShift.NONE, List.of(label), MADE_AT);
        assertThat(PrintedSheets.of(saved(job), 300).text().lines())
                .containsExactly("26A-001-D", "sling 5 May 26", "30 ml", "CC-26-A, tray A1");
    }

    @ParameterizedTest
    @MethodSource("everySheet")
    void aLabelWithoutASquareIsAllWordsAndKeepsToItself(LabelSheet sheet) {
        PotLabel label = new PotLabel("26A-001-D", "Grammostola difficilis", "sling 5 May 26", false);
        LabelJob job = new LabelJob(sheet, 1, PrintShift.NONE, List.of(label), MADE_AT);
        PrintedSheets printed = PrintedSheets.of(saved(job), 300);
        Box cell = sheet.cell(1);
        assertThat(printed.text()).contains("26A-001-D", "G. difficilis", "sling 5 May 26");
        assertThat(printed.decode(0, cell)).isEmpty();
        Box ink = printed.ink(0, cell).orElseThrow();
        assertThat(ink.leftMillimetres()).isGreaterThan(cell.leftMillimetres() + ONE_PIXEL_MILLIMETRES);
        assertThat(ink.rightMillimetres()).isLessThan(cell.rightMillimetres() - ONE_PIXEL_MILLIMETRES);
        assertThat(ink.topMillimetres()).isGreaterThan(cell.topMillimetres() + ONE_PIXEL_MILLIMETRES);
        assertThat(ink.bottomMillimetres()).isLessThan(cell.bottomMillimetres() - ONE_PIXEL_MILLIMETRES);
    }

    /** What is too low for any square still has room for a code to be typed. */
    @Test
    void aStripTooLowForASquareStillBearsItsCode() {
        LabelSheet strip = new LabelSheet(Paper.A4.page(), 1, 1, 20, 5, 10, 10, 20, 5);
        LabelJob job =
                new LabelJob(strip, 1, PrintShift.NONE, List.of(new PotLabel("26A-001-D", "", "", false)), MADE_AT);
        assertThat(PrintedSheets.of(saved(job), 300).text()).contains("26A-001-D");
    }

    @Test
    void thePictureIsThePage() {
        LabelJob job = job(LabelSheets.A4_3X8, 5, 24, PrintShift.NONE);
        PagePicture second = printer.picture(job, 1, 420);
        assertThat(second.widthPixels()).isEqualTo(420);
        assertThat(second.heightPixels()).isEqualTo(594);
        // Four of the 24 labels are left for the second sheet: ink in its first two rows alone.
        assertThat(darkPixels(second, 0, 74)).isPositive();
        assertThat(darkPixels(second, 76, 148)).isPositive();
        assertThat(darkPixels(second, 150, 594)).isZero();
    }

    private static long darkPixels(PagePicture picture, int fromRow, int toRow) {
        int[] argb = picture.argb();
        return java.util.stream.IntStream.range(fromRow * picture.widthPixels(), toRow * picture.widthPixels())
                .filter(i -> (argb[i] & 0xFF) < 100)
                .count();
    }

    private Path saved(LabelJob job) {
        return printerSaved(job, "labels.pdf");
    }

    private Path printerSaved(LabelJob job, String name) {
        Path pdf = folder.resolve(name);
        printer.save(job, pdf);
        return pdf;
    }

    private static LabelJob job(LabelSheet sheet, int firstCell, int count, PrintShift shift) {
        List<PotLabel> labels = new CodeRun("26A-", "", 3)
                .next(count, TakenCodes.of(List.of())).stream()
                        .map(PotCode::text)
                        .map(code -> new PotLabel(code, "Chromatopelma cyaneopubescens", "sling 5 May 26"))
                        .toList();
        return new LabelJob(sheet, firstCell, shift, labels, MADE_AT);
    }

    private static List<String> codes(LabelJob job) {
        return job.labels().stream().map(PotLabel::code).toList();
    }
}
