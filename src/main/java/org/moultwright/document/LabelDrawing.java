package org.moultwright.document;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.moultwright.domain.label.Box;
import org.moultwright.domain.label.LabelShape;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.DocumentException.Reason;
import org.moultwright.workflow.PotLabel;

/**
 * Draws labels onto one page.
 *
 * @param pageHeightMillimetres PDF measures from the lower edge, sheets from the upper
 */
record LabelDrawing(PDPageContentStream stream, double pageHeightMillimetres, LabelFonts fonts) {
    /** One millimetre: what a keeper still reads on a small lid. Common practice, no source. */
    private static final float SMALLEST_CODE_POINTS = 2.83f;

    /** The share of a line's height that lies above its baseline. */
    private static final float ASCENT = 0.8f;

    void draw(PotLabel label, Box box, LabelShape shape) throws IOException {
        if (!label.hasSquare()) {
            drawText(label, LabelLayout.wordsAlone(box, shape), shape == LabelShape.ROUND);
            return;
        }
        CodeSquare square =
                CodeSquare.within(label.code(), LabelLayout.roomDots(box, shape), LabelLayout.SMALLEST_MODULE_DOTS);
        LabelLayout layout = LabelLayout.of(box, shape, square.sizeWithQuietZone());
        drawSquare(square, layout);
        drawText(label, layout.text(), layout.isCentred());
    }

    /** All modules are one path, so that no renderer can leave a seam between two of them. */
    private void drawSquare(CodeSquare square, LabelLayout layout) throws IOException {
        double module = layout.moduleMillimetres();
        double left = layout.square().leftMillimetres() + square.quietModules() * module;
        double top = layout.square().topMillimetres() + square.quietModules() * module;
        for (int row = 0; row < square.size(); row++) {
            for (int column = 0; column < square.size(); column++) {
                if (square.isDark(column, row)) {
                    addModule(left + column * module, top + row * module, module);
                }
            }
        }
        stream.fill();
    }

    private void addModule(double left, double top, double side) throws IOException {
        stream.addRect(
                PrinterDots.points(left),
                PrinterDots.points(pageHeightMillimetres - top - side),
                PrinterDots.points(side),
                PrinterDots.points(side));
    }

    /** All rows together in the middle of their room. */
    private void drawText(PotLabel label, Box box, boolean isCentred) throws IOException {
        float width = PrinterDots.points(box.widthMillimetres());
        LabelText text = LabelText.of(label, fonts, width, PrinterDots.points(box.heightMillimetres()));
        requireReadable(label, text.points(text.rows().get(0)));
        float left = PrinterDots.points(box.leftMillimetres());
        float middle = PrinterDots.points(pageHeightMillimetres - box.topMillimetres() - box.heightMillimetres() / 2);
        float top = middle + text.heightPoints() / 2;
        for (LabelText.Row row : text.rows()) {
            float size = text.points(row);
            float baseline = top - text.heightPoints(row) * ASCENT;
            float spare = isCentred ? (width - row.text().widthAt(size)) / 2 : 0;
            show(row.text(), size, left + spare, baseline);
            top -= text.heightPoints(row);
        }
    }

    /** A code nobody can read off its pot is no code. */
    private static void requireReadable(PotLabel label, float points) {
        if (points < SMALLEST_CODE_POINTS) {
            throw new DocumentException(
                    Reason.LABEL_TOO_SMALL,
                    Texts.say(
                            "{0} is too long for this label: its letters would be less than {1} mm high.",
                            label.code(), Numbers.fixed(PrinterDots.millimetres(SMALLEST_CODE_POINTS), 0)));
        }
    }

    private void show(TextLine line, float size, float left, float baseline) throws IOException {
        stream.beginText();
        stream.setFont(line.font(), size);
        stream.newLineAtOffset(left, baseline);
        stream.showText(line.text());
        stream.endText();
    }
}
