package org.moultwright.document;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.moultwright.workflow.HandOverSlip;

/** A hand-over slip as a PDF. The same slip always gives the same bytes. */
final class SlipDocument {
    private final HandOverSlip slip;

    SlipDocument(HandOverSlip slip) {
        this.slip = slip;
    }

    byte[] bytes() {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            new DocumentFacts(slip.title() + ", " + slip.day(), slip.madeAt()).describe(document);
            float width = PrinterDots.points(slip.paper().widthMillimetres());
            float height = PrinterDots.points(slip.paper().heightMillimetres());
            List<PageSketch> pages = new SlipPages(slip, LabelFonts.embeddedIn(document), width, height).laid();
            for (PageSketch sketch : pages) {
                PDPage page = new PDPage(new PDRectangle(width, height));
                document.addPage(page);
                try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
                    sketch.draw(stream, height);
                }
            }
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a document cannot be made in memory", e);
        }
    }
}
