package org.moultwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.moultwright.document.PrintedLetters.Letter;
import org.moultwright.domain.label.Box;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.Paper;
import org.moultwright.domain.label.PrintShift;
import org.moultwright.language.PseudoLanguage;
import org.moultwright.language.Texts;
import org.moultwright.text.SitterWords;
import org.moultwright.workflow.CalibrationPage;
import org.moultwright.workflow.HandOverSlip;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PotLabel;
import org.moultwright.workflow.SitterSheet.Tray;

/**
 * Makes sitter's sheets, hand-over slips, labels of pots and containers, and calibration pages in an invented wordy
 * language, and fails where a letter leaves its page or label, meets another, or a sentence is missing.
 */
final class PseudoSheets {
    private static final Path FOLDER = Path.of("target", "sheets");
    private static final Instant MADE_AT = Instant.parse("2026-05-05T20:41:00Z");
    private static final double SLIP_MARGIN_MILLIMETRES = 17;

    private PseudoSheets() {}

    public static void main(String[] none) throws IOException {
        Texts.use(PseudoLanguage.made());
        Files.createDirectories(FOLDER);
        for (Paper paper : Paper.values()) {
            for (int count : new int[] {1, 13, 40}) {
                sitterSheet(paper, count);
            }
            for (int pots : new int[] {1, 40, 800}) {
                slip(paper, pots);
            }
        }
        for (LabelSheet sheet : LabelSheets.everything()) {
            labels(sheet);
            calibration(sheet);
        }
    }

    private static void sitterSheet(Paper paper, int count) throws IOException {
        List<Tray> trays = SitterDocumentTest.trays(count, tray -> Texts.say("Nothing special."));
        PrintedSheets printed = SitterDocumentTest.printed(
                SitterDocumentTest.sheet(paper, trays), "wordy-" + paper.key() + "-" + count);
        assertThat(printed.count()).isEqualTo(1);
        SitterDocumentTest.staysOnThePage(printed, paper);
        String words = SitterDocumentTest.words(printed);
        for (List<String> rules :
                List.of(SitterWords.TO_DO, SitterWords.call(Optional.of("28.3 °C (INC-1)")), SitterWords.NEVER)) {
            rules.forEach(rule -> assertThat(words).contains(rule));
        }
        trays.forEach(tray -> assertThat(words).contains(" " + tray.code()));
    }

    private static void slip(Paper paper, int pots) {
        HandOverSlip slip = SlipDocumentTest.slip(paper, pots);
        Path pdf = FOLDER.resolve("slip-wordy-" + paper.key() + "-" + pots + ".pdf");
        new PdfHandOverSlips().save(slip, pdf);
        String words = PrintedSheets.of(pdf, 40).text().replaceAll("\\s+", " ");
        assertThat(words).contains(slip.total()).contains(slip.cautions());
        slip.lots().forEach(lot -> assertThat(words).contains(lot.codes()));
        Box room = new Box(
                SLIP_MARGIN_MILLIMETRES,
                SLIP_MARGIN_MILLIMETRES,
                paper.widthMillimetres() - 2 * SLIP_MARGIN_MILLIMETRES,
                paper.heightMillimetres() - 2 * SLIP_MARGIN_MILLIMETRES);
        List<Letter> letters = PrintedLetters.of(pdf);
        assertThat(letters).allMatch(letter -> letter.isWithin(room));
        assertNoneMeet(letters);
    }

    private static void labels(LabelSheet sheet) {
        List<PotLabel> labels = IntStream.rangeClosed(1, sheet.cells())
                .mapToObj(number -> number % 2 == 0
                        ? new PotLabel("INC-" + number, Texts.say("incubator"), Texts.say("in {0}", "R-1"))
                        : new PotLabel(
                                "26A-%03d-D".formatted(number),
                                "Chromatopelma cyaneopubescens",
                                Texts.say("{0} {1}", Texts.say("sling"), "5 May 26")))
                .toList();
        Path pdf = FOLDER.resolve("labels-wordy-" + name(sheet) + ".pdf");
        new PdfLabelPrinter().save(new LabelJob(sheet, 1, PrintShift.NONE, labels, MADE_AT), pdf);
        List<Letter> letters = PrintedLetters.of(pdf);
        assertThat(letters)
                .isNotEmpty()
                .allMatch(letter ->
                        IntStream.rangeClosed(1, sheet.cells()).anyMatch(cell -> letter.isWithin(sheet.cell(cell))));
        assertNoneMeet(letters);
    }

    private static void calibration(LabelSheet sheet) {
        Path pdf = FOLDER.resolve("calibration-wordy-" + name(sheet) + ".pdf");
        new PdfLabelPrinter().save(new CalibrationPage(sheet, PrintShift.NONE, MADE_AT), pdf);
        List<Letter> letters = PrintedLetters.of(pdf);
        Box page = new Box(0, 0, sheet.paper().widthMillimetres(), sheet.paper().heightMillimetres());
        assertThat(letters).allMatch(letter -> letter.isWithin(page));
        assertNoneMeet(letters);
    }

    private static String name(LabelSheet sheet) {
        return sheet.columns() + "x" + sheet.rows() + "-" + Math.round(sheet.labelWidthMillimetres());
    }

    /** Letters set over each other cannot be read. */
    private static void assertNoneMeet(List<Letter> letters) {
        for (int i = 0; i < letters.size(); i++) {
            for (int j = i + 1; j < letters.size(); j++) {
                if (letters.get(i).meets(letters.get(j))) {
                    throw new AssertionError(letters.get(i) + " meets " + letters.get(j));
                }
            }
        }
    }
}
