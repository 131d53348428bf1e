package org.moultwright.document;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.PageSize;
import org.moultwright.language.Texts;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PotLabel;

/** A label job as a PDF. The same job always gives the same bytes. */
final class LabelDocument {
    private final LabelJob job;

    LabelDocument(LabelJob job) {
        this.job = job;
    }

    byte[] bytes() {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            describe(document);
            LabelFonts fonts = LabelFonts.embeddedIn(document);
            for (int page = 0; page < job.sheets(); page++) {
                addPage(document, page, fonts);
            }
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a document cannot be made in memory", e);
        }
    }

    private void describe(PDDocument document) {
        List<PotLabel> labels = job.labels();
        String title = Texts.say(
                "Pot labels {0} to {1}",
                labels.get(0).code(), labels.get(labels.size() - 1).code());
        new DocumentFacts(title, job.madeAt()).describe(document);
    }

    private void addPage(PDDocument document, int number, LabelFonts fonts) throws IOException {
        LabelSheet sheet = job.sheet();
        PageSize paper = sheet.paper();
        PDPage page = new PDPage(new PDRectangle(
                PrinterDots.points(paper.widthMillimetres()), PrinterDots.points(paper.heightMillimetres())));
        document.addPage(page);
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
            LabelDrawing drawing = new LabelDrawing(stream, paper.heightMillimetres(), fonts);
            for (int cell = 1; cell <= sheet.cells(); cell++) {
                int index = number * sheet.cells() + cell - job.firstCell();
                if (index >= 0 && index < job.labels().size()) {
                    drawing.draw(job.labels().get(index), sheet.cell(cell).moved(job.shift()), sheet.shape());
                }
            }
        }
    }
}
