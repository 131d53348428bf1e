package org.moultwright.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;

/**
 * Words broken into lines that fit a column.
 *
 * @param font what they are set in
 * @param size in points
 * @param lines each no wider than the column, unless one word alone is
 */
record SheetText(PDFont font, float size, List<String> lines) {
    /** From baseline to baseline, in sizes. */
    private static final float SPACING = 1.3f;

    /** From the top of a line to its baseline, in sizes. */
    private static final float ASCENT = 1.02f;

    static SheetText of(String words, PDFont font, float size, float width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : new TextLine(font, words).text().split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && new TextLine(font, longer).widthAt(size) > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return new SheetText(font, size, lines);
    }

    float height() {
        return lines.size() * size * SPACING;
    }

    /** Writes it beneath {@code top}, measured as PDF does, from the lower edge. */
    void draw(PDPageContentStream stream, float left, float top) {
        try {
            float baseline = top - size * ASCENT;
            for (String line : lines) {
                stream.beginText();
                stream.setFont(font, size);
                stream.newLineAtOffset(left, baseline);
                stream.showText(line);
                stream.endText();
                baseline -= size * SPACING;
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a document cannot be made in memory", e);
        }
    }
}
