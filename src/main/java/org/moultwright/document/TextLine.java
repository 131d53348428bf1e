package org.moultwright.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** One line of text in a font, holding only letters the font has: others show as a question mark. */
record TextLine(PDFont font, String text) {
    TextLine {
        text = writable(font, text);
    }

    /** The largest size in points, at most {@code most}, at which the line is no wider than {@code width} points. */
    float sizeWithin(float width, float most) {
        return Math.min(most, width / widthAtSizeOne(font, text));
    }

    /** How wide the line is in points at a size in points. */
    float widthAt(float size) {
        return size * widthAtSizeOne(font, text);
    }

    private static String writable(PDFont font, String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.strip()
                .codePoints()
                .mapToObj(Character::toString)
                .forEach(letter -> kept.append(hasGlyph(font, letter) ? letter : "?"));
        return kept.toString();
    }

    private static boolean hasGlyph(PDFont font, String letter) {
        try {
            widthAtSizeOne(font, letter);
            return true;
        } catch (IllegalArgumentException noSuchGlyph) {
            return false;
        }
    }

    private static float widthAtSizeOne(PDFont font, String text) {
        try {
            return font.getStringWidth(text) / 1000;
        } catch (IOException e) {
            throw new UncheckedIOException("an embedded font cannot be read", e);
        }
    }
}
