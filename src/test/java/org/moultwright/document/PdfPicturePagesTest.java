package org.moultwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.moultwright.domain.label.Paper;
import org.moultwright.workflow.PagePicture;

class PdfPicturePagesTest {
    private static final Instant NOW = Instant.parse("2026-05-05T20:41:00Z");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void aPageIsAsLargeAsThePaperOnItsSide(Paper paper) throws IOException {
        PDRectangle upright = paper == Paper.A4 ? PDRectangle.A4 : PDRectangle.LETTER;
        Path pdf = folder.resolve("page.pdf");
        new PdfPicturePages(paper).save(new PagePicture(2, 1, new int[2]), "CC-26-A", NOW, pdf);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDRectangle page = document.getPage(0).getMediaBox();
            assertThat(page.getWidth()).isCloseTo(upright.getHeight(), within(0.1f));
            assertThat(page.getHeight()).isCloseTo(upright.getWidth(), within(0.1f));
        }
    }
}
