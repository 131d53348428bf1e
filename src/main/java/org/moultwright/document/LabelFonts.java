package org.moultwright.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The bundled fonts of one document, embedded with the letters it uses. */
record LabelFonts(PDFont strong, PDFont italic, PDFont plain) {

    static LabelFonts embeddedIn(PDDocument document) {
        return new LabelFonts(
                embed(document, "OpenSans-Bold.ttf"),
                embed(document, "OpenSans-Italic.ttf"),
                embed(document, "OpenSans-Regular.ttf"));
    }

    private static PDFont embed(PDDocument document, String file) {
        try (InputStream font = LabelFonts.class.getResourceAsStream("/org/moultwright/fonts/" + file)) {
            return PDType0Font.load(document, Objects.requireNonNull(font, file), true);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " is part of the program and cannot be read", e);
        }
    }
}
