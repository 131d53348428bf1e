package org.moultwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.domain.label.Box;
import org.moultwright.domain.label.Paper;
import org.moultwright.text.SlipWords;
import org.moultwright.workflow.HandOverSlip;
import org.moultwright.workflow.HandOverSlip.Lot;
import org.moultwright.workflow.InventedPots;

/** The pages are left in target/sheets, to be looked at. */
class SlipDocumentTest {
    private static final Path SHEETS = Path.of("target", "sheets");
    private static final double MARGIN_MILLIMETRES = 17;

    @ParameterizedTest
    @CsvSource({"A4,1,1", "A4,7,1", "LETTER,40,1", "A4,800,3"})
    void everythingStandsOnItsPages(Paper paper, int pots, int pages) throws IOException {
        HandOverSlip slip = slip(paper, pots);
        Path pdf = Files.createDirectories(SHEETS).resolve("slip-" + paper.key() + "-" + pots + ".pdf");
        new PdfHandOverSlips().save(slip, pdf);
        PrintedSheets printed = PrintedSheets.of(pdf, 100);
        assertThat(printed.count()).isEqualTo(pages);
        String words = printed.text().replaceAll("\\s+", " ");
        assertThat(words)
                .contains("Hand-over slip", "An invented keeper", "no permit", "Taken over by", slip.total())
                .contains("page " + pages + " of " + pages);
        slip.lots().forEach(lot -> assertThat(words).contains(lot.taxon()).contains(lot.codes()));
        for (int page = 0; page < pages; page++) {
            Box ink = printed.ink(page, new Box(0, 0, paper.widthMillimetres(), paper.heightMillimetres()))
                    .orElseThrow();
            assertThat(ink.leftMillimetres()).isGreaterThan(MARGIN_MILLIMETRES);
            assertThat(ink.rightMillimetres()).isLessThan(paper.widthMillimetres() - MARGIN_MILLIMETRES);
            assertThat(ink.bottomMillimetres()).isLessThan(paper.heightMillimetres() - MARGIN_MILLIMETRES);
        }
    }

    @Test
    void theSameSlipGivesTheSameBytes() {
        HandOverSlip slip = slip(Paper.A4, 3);
        assertThat(new SlipDocument(slip).bytes()).isEqualTo(new SlipDocument(slip).bytes());
    }

    static HandOverSlip slip(Paper paper, int pots) {
        List<String> codes = IntStream.rangeClosed(1, pots)
                .mapToObj(number -> InventedPots.codeOf("26A", number))
                .toList();
        return new HandOverSlip(
                paper,
                SlipWords.TITLE,
                "5 May 2026",
                List.of("An invented keeper", "Invented Lane 1"),
                List.of(),
                List.of(
                        new Lot("Chromatopelma cyaneopubescens", pots + " animals, instar 3,", "Brood CC-26-A.", codes),
                        new Lot("Poecilotheria regalis", "1 animal, sling,", "Brood PR-26-R.", List.of("26R-001-4"))),
                SlipWords.total(pots + 1),
                SlipWords.CAUTIONS,
                Instant.parse("2026-05-05T20:41:00Z"));
    }
}
