package org.moultwright.document;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.moultwright.domain.label.Paper;
import org.moultwright.workflow.PagePicture;
import org.moultwright.workflow.PicturePages;

/** Pictures as pages of PDF. The same picture always gives the same bytes. Safe to share. */
public final class PdfPicturePages implements PicturePages {
    private static final float MARGIN = PrinterDots.points(10);

    private final Paper paper;

    public PdfPicturePages(Paper paper) {
        this.paper = paper;
    }

    @Override
    public void save(PagePicture picture, String title, Instant madeAt, Path pdf) {
        DocumentFile.write(pdf, bytes(picture, title, madeAt));
    }

    private byte[] bytes(PagePicture picture, String title, Instant madeAt) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            new DocumentFacts(title, madeAt).describe(document);
            float width = PrinterDots.points(paper.heightMillimetres());
            float height = PrinterDots.points(paper.widthMillimetres());
            PDPage page = new PDPage(new PDRectangle(width, height));
            document.addPage(page);
            float scale = Math.min(
                    (width - 2 * MARGIN) / picture.widthPixels(), (height - 2 * MARGIN) / picture.heightPixels());
            try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
                stream.drawImage(
                        LosslessFactory.createFromImage(document, image(picture)),
                        MARGIN,
                        height - MARGIN - scale * picture.heightPixels(),
                        scale * picture.widthPixels(),
                        scale * picture.heightPixels());
            }
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a document cannot be made in memory", e);
        }
    }

    private static BufferedImage image(PagePicture picture) {
        BufferedImage image =
                new BufferedImage(picture.widthPixels(), picture.heightPixels(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, picture.widthPixels(), picture.heightPixels(), picture.argb(), 0, picture.widthPixels());
        return image;
    }
}
