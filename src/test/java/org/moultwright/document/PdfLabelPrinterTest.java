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
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.domain.code.PotCode;
import org.moultwright.domain.code.PotPrefix;
import org.moultwright.domain.label.Box;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.Paper;
import org.moultwright.domain.label.PrintShift;
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
        int modules = CodeSquare.of("26A-001-D").sizeWithQuietZone();
        assertThat(modules).isEqualTo(29);
        // The published least module for QR of GS1 is 0.396 mm; only the 10 mm label is too low for it.
        for (LabelSheet sheet : LabelSheets.all()) {
            LabelLayout layout = LabelLayout.of(sheet.cell(1), modules);
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
        LabelSheet tiny = new LabelSheet(Paper.A4, 5, 20, 20, 7, 10, 10, 20, 7);
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> printer.save(job(tiny, 1, 1, PrintShift.NONE), folder.resolve("tiny.pdf")))
                .withMessage(
                        "A label of 20.0 × 7.0 mm is too small for this code. Choose a sheet with larger labels. [DO-7]")
                .extracting(DocumentException::reason)
                .isEqualTo(DocumentException.Reason.LABEL_TOO_SMALL);
        assertThat(folder).isEmptyDirectory();
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
        List<PotLabel> labels = new PotPrefix("26A")
                .next(count, List.of()).stream()
                        .map(PotCode::text)
                        .map(code -> new PotLabel(code, "Chromatopelma cyaneopubescens", "sling 5 May 26"))
                        .toList();
        return new LabelJob(sheet, firstCell, shift, labels, MADE_AT);
    }

    private static List<String> codes(LabelJob job) {
        return job.labels().stream().map(PotLabel::code).toList();
    }
}
