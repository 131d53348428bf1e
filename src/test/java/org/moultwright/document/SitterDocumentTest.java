package org.moultwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.moultwright.domain.label.Box;
import org.moultwright.domain.label.Paper;
import org.moultwright.text.SitterWords;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.SitterSheet;
import org.moultwright.workflow.SitterSheet.Tray;

/** The pages are left in target/sheets, to be looked at. */
class SitterDocumentTest {
    private static final Path SHEETS = Path.of("target", "sheets");
    private static final double MARGIN_MILLIMETRES = 14;
    private static final List<String> EXPECTED = List.of(
            "Nothing special.",
            "Expect: first slings 7 to 9 May, half are slings 9 to 13 May. From 14 May on they may have to be kept apart:"
                    + " call that day.",
            "Slings are in it already. Expect: half are slings 6 to 8 May. Perhaps: nearly all are slings 9 to 13 May.");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"A4,1", "A4,4", "A4,13", "A4,40", "LETTER,4", "LETTER,40"})
    void everyTrayStandsOnOnePage(Paper paper, int count) throws IOException {
        List<Tray> trays = trays(count, tray -> EXPECTED.get(tray % 7 == 3 ? 1 : tray % 11 == 5 ? 2 : 0));
        PrintedSheets printed = printed(sheet(paper, trays), paper.key() + "-" + count);
        assertThat(printed.count()).isEqualTo(1);
        assertThat(words(printed))
                .contains(
                        "Do not open pots.",
                        "write what the display reads",
                        "Saturday 9 May to Saturday 16 May",
                        "Sat 16");
        trays.forEach(tray -> assertThat(words(printed)).contains(" " + tray.code()));
        assertThat(words(printed)).doesNotContain("more There is no room");
        staysOnThePage(printed, paper);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void moreThanFitAreCountedByBox(Paper paper) throws IOException {
        List<Tray> trays = trays(90, tray -> "Expect: half are slings %d to %d May.".formatted(1 + tray, 3 + tray));
        PrintedSheets printed = printed(sheet(paper, trays), paper.key() + "-90-all-different");
        String words = words(printed);
        int more = Integer.parseInt(words.replaceFirst(".* and (\\d+) more .*", "$1"));
        assertThat(words).contains("10 in box 9", "There is no room for them");
        assertThat(trays.stream().filter(tray -> words.contains(" " + tray.code() + " ")))
                .hasSize(90 - more);
        staysOnThePage(printed, paper);
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4", "5", "6"})
    void whateverTheWordsNothingLeavesThePage(long seed) throws IOException {
        Random random = new Random(seed);
        List<Tray> trays = trays(
                1 + random.nextInt(60),
                tray -> String.join(" ", java.util.Collections.nCopies(1 + random.nextInt(30), "wörd")));
        PrintedSheets printed = printed(sheet(Paper.values()[random.nextInt(2)], trays), "seed-" + seed);
        assertThat(printed.count()).isEqualTo(1);
    }

    @Test
    void anUnwritableFileIsRefusedWithARemedy() {
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> new PdfSitterSheets().save(sheet(Paper.A4, List.of()), folder))
                .withMessageContaining("is not a file")
                .extracting(DocumentException::reason)
                .isEqualTo(DocumentException.Reason.NOT_A_FILE);
    }

    @Test
    void theSameSheetGivesTheSameBytes() {
        SitterSheet sheet = sheet(Paper.A4, trays(3, tray -> EXPECTED.get(0)));
        assertThat(new SitterDocument(sheet).bytes()).isEqualTo(new SitterDocument(sheet).bytes());
    }

    static void staysOnThePage(PrintedSheets printed, Paper paper) {
        Box ink = printed.ink(0, new Box(0, 0, paper.widthMillimetres(), paper.heightMillimetres()))
                .orElseThrow();
        assertThat(ink.leftMillimetres()).isGreaterThan(MARGIN_MILLIMETRES);
        assertThat(ink.topMillimetres()).isGreaterThan(MARGIN_MILLIMETRES);
        assertThat(ink.rightMillimetres()).isLessThan(paper.widthMillimetres() - MARGIN_MILLIMETRES);
        assertThat(ink.bottomMillimetres()).isLessThan(paper.heightMillimetres() - MARGIN_MILLIMETRES);
    }

    static PrintedSheets printed(SitterSheet sheet, String name) throws IOException {
        Path pdf = Files.createDirectories(SHEETS).resolve("sitter-" + name + ".pdf");
        new PdfSitterSheets().save(sheet, pdf);
        return PrintedSheets.of(pdf, 100);
    }

    static String words(PrintedSheets printed) {
        return printed.text().replaceAll("\\s+", " ");
    }

    static List<Tray> trays(int count, IntFunction<String> expected) {
        return IntStream.range(0, count)
                .mapToObj(tray -> new Tray(
                        "" + (char) ('A' + tray / 10) + (1 + tray % 10),
                        "box " + (1 + tray / 10),
                        expected.apply(tray)))
                .toList();
    }

    static SitterSheet sheet(Paper paper, List<Tray> trays) {
        return new SitterSheet(
                paper,
                SitterWords.TITLE,
                "Saturday 9 May to Saturday 16 May",
                trays.size() == 4 ? "" : "+00 123 456 78 90",
                LocalDate.of(2026, 5, 9)
                        .datesUntil(LocalDate.of(2026, 5, 17))
                        .map(day -> (day.getDayOfWeek().name().charAt(0)
                                + day.getDayOfWeek().name().substring(1, 3).toLowerCase(java.util.Locale.ROOT) + " "
                                + day.getDayOfMonth()))
                        .toList(),
                new SitterSheet.Lists(
                        SitterWords.TO_DO, SitterWords.call(Optional.of("28.3 °C (INC-1)")), SitterWords.NEVER),
                trays,
                SitterWords.note(),
                Instant.parse("2026-05-03T19:41:00Z"));
    }
}
