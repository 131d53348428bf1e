package org.moultwright.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Words and frames with their places on a page, in points from its upper left corner: first laid, then drawn. */
final class PageSketch {
    private static final float HAIRLINE = 0.5f;

    private final List<Piece> pieces = new ArrayList<>();
    private final List<Frame> frames = new ArrayList<>();

    /** Places words within a column; says how high they are. */
    float add(PDFont font, String words, float points, float left, float from, float column) {
        SheetText text = SheetText.of(words, font, points, column);
        pieces.add(new Piece(text, left, from));
        return text.height();
    }

    void frame(float left, float top, float width, float height) {
        frames.add(new Frame(left, top, width, height));
    }

    void rule(float left, float top, float width) {
        frame(left, top, width, 0);
    }

    void draw(PDPageContentStream stream, float pageHeight) {
        try {
            stream.setLineWidth(HAIRLINE);
            for (Frame frame : frames) {
                stream.addRect(frame.left(), pageHeight - frame.top() - frame.height(), frame.width(), frame.height());
                stream.stroke();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a document cannot be made in memory", e);
        }
        pieces.forEach(piece -> piece.text().draw(stream, piece.left(), pageHeight - piece.top()));
    }

    private record Piece(SheetText text, float left, float top) {}

    private record Frame(float left, float top, float width, float height) {}
}
