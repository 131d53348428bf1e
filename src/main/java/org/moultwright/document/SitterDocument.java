package org.moultwright.document;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Function;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.moultwright.language.Texts;
import org.moultwright.workflow.SitterSheet;
import org.moultwright.workflow.SitterSheet.Tray;

/** A sitter's sheet as a PDF of one page, in type as large as fits. The same sheet always gives the same bytes. */
final class SitterDocument {
    private static final float LARGEST_POINTS = 11.5f;

    /** Smaller is not read by tired eyes. */
    private static final float SMALLEST_POINTS = 8.5f;

    private static final float STEP_POINTS = 0.5f;

    private final SitterSheet sheet;

    SitterDocument(SitterSheet sheet) {
        this.sheet = sheet;
    }

    byte[] bytes() {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            new DocumentFacts(Texts.say("Sitter's sheet, {0}", sheet.dates()), sheet.madeAt()).describe(document);
            SitterPage laid = laid(LabelFonts.embeddedIn(document));
            PDPage page = new PDPage(new PDRectangle(
                    PrinterDots.points(sheet.paper().widthMillimetres()),
                    PrinterDots.points(sheet.paper().heightMillimetres())));
            document.addPage(page);
            try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
                laid.draw(stream);
            }
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a document cannot be made in memory", e);
        }
    }

    /** A row for each tray; where that is too much, those alike share one; where that is, the last are counted only. */
    private SitterPage laid(LabelFonts fonts) {
        List<Tray> together = SitterRows.byBox(sheet.trays());
        for (List<Tray> rows : List.of(sheet.trays(), together)) {
            for (float size = LARGEST_POINTS; size >= SMALLEST_POINTS; size -= STEP_POINTS) {
                SitterPage page = new SitterPage(sheet, rows, fonts, size);
                if (page.fits()) {
                    return page;
                }
            }
        }
        Function<Integer, SitterPage> cut =
                count -> new SitterPage(sheet, SitterRows.cut(sheet.trays(), together, count), fonts, SMALLEST_POINTS);
        int count = together.size() - 1;
        while (count > 0 && !cut.apply(count).fits()) {
            count--;
        }
        return cut.apply(count);
    }
}
