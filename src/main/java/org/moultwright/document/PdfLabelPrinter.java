package org.moultwright.document;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.moultwright.workflow.CalibrationPage;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.LabelPrinter;
import org.moultwright.workflow.PagePicture;

/** Labels as PDF, and pictures of its pages. Holds nothing; safe to share. */
public final class PdfLabelPrinter implements LabelPrinter {

    @Override
    public void save(LabelJob job, Path pdf) {
        DocumentFile.write(pdf, new LabelDocument(job).bytes());
    }

    @Override
    public PagePicture picture(LabelJob job, int page, int widthPixels) {
        return picture(new LabelDocument(job).bytes(), page, widthPixels);
    }

    @Override
    public void save(CalibrationPage page, Path pdf) {
        DocumentFile.write(pdf, new CalibrationDocument(page).bytes());
    }

    @Override
    public PagePicture picture(CalibrationPage page, int widthPixels) {
        return picture(new CalibrationDocument(page).bytes(), 0, widthPixels);
    }

    private static PagePicture picture(byte[] pdf, int page, int widthPixels) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            float scale = widthPixels / document.getPage(page).getMediaBox().getWidth();
            BufferedImage image = new PDFRenderer(document).renderImage(page, scale, ImageType.RGB);
            int width = image.getWidth();
            int height = image.getHeight();
            return new PagePicture(width, height, image.getRGB(0, 0, width, height, null, 0, width));
        } catch (IOException e) {
            throw new UncheckedIOException("a document just made cannot be read back", e);
        }
    }
}
