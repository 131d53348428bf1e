package org.moultwright.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.moultwright.domain.label.Box;

/** Every letter of a saved PDF with its place on its page, as the file says, not as it looks. */
final class PrintedLetters {
    private static final double MILLIMETRES_IN_POINT = 25.4 / 72;

    private PrintedLetters() {}

    /**
     * A letter.
     *
     * @param page from 0
     * @param place in mm from the upper left corner
     */
    record Letter(int page, String sign, Box place) {
        boolean meets(Letter other) {
            return page == other.page
                    && place.leftMillimetres() < other.place.rightMillimetres() - 0.1
                    && other.place.leftMillimetres() < place.rightMillimetres() - 0.1
                    && place.topMillimetres() < other.place.bottomMillimetres() - 0.1
                    && other.place.topMillimetres() < place.bottomMillimetres() - 0.1;
        }

        boolean isWithin(Box room) {
            return place.leftMillimetres() >= room.leftMillimetres()
                    && place.rightMillimetres() <= room.rightMillimetres()
                    && place.topMillimetres() >= room.topMillimetres()
                    && place.bottomMillimetres() <= room.bottomMillimetres();
        }
    }

    static List<Letter> of(Path pdf) {
        List<Letter> letters = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    if (!text.getUnicode().isBlank()) {
                        letters.add(new Letter(getCurrentPageNo() - 1, text.getUnicode(), place(text)));
                    }
                }
            }.getText(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return letters;
    }

    private static Box place(TextPosition text) {
        return new Box(
                text.getXDirAdj() * MILLIMETRES_IN_POINT,
                (text.getYDirAdj() - text.getHeightDir()) * MILLIMETRES_IN_POINT,
                text.getWidthDirAdj() * MILLIMETRES_IN_POINT,
                text.getHeightDir() * MILLIMETRES_IN_POINT);
    }
}
