package org.moultwright.document;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.moultwright.domain.label.Box;
import org.moultwright.domain.label.LabelShape;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.PrintShift;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.workflow.CalibrationPage;

/**
 * The outlines of a sheet's labels as they would be printed, with a ruler across the left and the upper edge of the first:
 * held against the true sheet, the mark at which its edge lies is what the shift lacks. Where there is room, a line of
 * 100 mm shows whether the printer kept the size.
 */
final class CalibrationDocument {
    private static final double RULER_MILLIMETRES = 3;
    private static final double STEP_MILLIMETRES = 0.5;
    private static final double LINE_MILLIMETRES = 100;
    private static final double LEAST_FOR_LINE_MILLIMETRES = 120;
    private static final float HAIRLINE = 0.3f;
    private static final float SIZE = 8;

    /** How far from its middle a quarter of a circle's curve is steered, in radii. */
    private static final double STEER = 0.5523;

    private final LabelSheet sheet;
    private final PrintShift shift;
    private final CalibrationPage page;

    CalibrationDocument(CalibrationPage page) {
        this.sheet = page.sheet();
        this.shift = page.shift();
        this.page = page;
    }

    byte[] bytes() {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            new DocumentFacts(Texts.say("Calibration page, {0}", sheet.title()), page.madeAt()).describe(document);
            LabelFonts fonts = LabelFonts.embeddedIn(document);
            PDPage paper = new PDPage(new PDRectangle(
                    PrinterDots.points(sheet.paper().widthMillimetres()),
                    PrinterDots.points(sheet.paper().heightMillimetres())));
            document.addPage(paper);
            try (PDPageContentStream stream = new PDPageContentStream(document, paper)) {
                stream.setLineWidth(HAIRLINE);
                draw(stream, fonts);
            }
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a document cannot be made in memory", e);
        }
    }

    private void draw(PDPageContentStream stream, LabelFonts fonts) throws IOException {
        for (int cell = 1; cell <= sheet.cells(); cell++) {
            outline(stream, sheet.cell(cell).moved(shift));
        }
        Box first = sheet.cell(1).moved(shift);
        for (double at = -RULER_MILLIMETRES; at <= RULER_MILLIMETRES; at += STEP_MILLIMETRES) {
            double mark = at == 0 ? 3 : at == Math.rint(at) ? 2 : 1;
            double middleX = first.leftMillimetres() + first.widthMillimetres() / 2;
            double middleY = first.topMillimetres() + first.heightMillimetres() / 2;
            line(stream, first.leftMillimetres() + at, middleY - mark, first.leftMillimetres() + at, middleY + mark);
            line(stream, middleX - mark, first.topMillimetres() + at, middleX + mark, first.topMillimetres() + at);
        }
        if (sheet.paper().widthMillimetres() >= LEAST_FOR_LINE_MILLIMETRES) {
            hundred(stream, fonts);
        }
    }

    private void outline(PDPageContentStream stream, Box box) throws IOException {
        if (sheet.shape() == LabelShape.ROUND) {
            circle(stream, box);
        } else {
            stream.addRect(
                    x(box.leftMillimetres()),
                    y(box.bottomMillimetres()),
                    PrinterDots.points(box.widthMillimetres()),
                    PrinterDots.points(box.heightMillimetres()));
        }
        stream.stroke();
    }

    private void circle(PDPageContentStream stream, Box box) throws IOException {
        double radius = box.widthMillimetres() / 2;
        double middleX = box.leftMillimetres() + radius;
        double middleY = box.topMillimetres() + radius;
        stream.moveTo(x(middleX + radius), y(middleY));
        for (int quarter = 0; quarter < 4; quarter++) {
            double from = Math.PI / 2 * quarter;
            double to = from + Math.PI / 2;
            stream.curveTo(
                    x(middleX + radius * (Math.cos(from) - STEER * Math.sin(from))),
                    y(middleY + radius * (Math.sin(from) + STEER * Math.cos(from))),
                    x(middleX + radius * (Math.cos(to) + STEER * Math.sin(to))),
                    y(middleY + radius * (Math.sin(to) - STEER * Math.cos(to))),
                    x(middleX + radius * Math.cos(to)),
                    y(middleY + radius * Math.sin(to)));
        }
    }

    private void hundred(PDPageContentStream stream, LabelFonts fonts) throws IOException {
        double left = (sheet.paper().widthMillimetres() - LINE_MILLIMETRES) / 2;
        double top = sheet.paper().heightMillimetres() / 2;
        float width = PrinterDots.points(LINE_MILLIMETRES);
        SheetText words = SheetText.of(words(), fonts.plain(), SIZE, width);
        float margin = PrinterDots.points(2);
        stream.setNonStrokingColor(1f, 1f, 1f);
        stream.addRect(
                x(left) - margin, y(top) - words.height() - margin, width + 2 * margin, words.height() + 3 * margin);
        stream.fill();
        stream.setNonStrokingColor(0f, 0f, 0f);
        line(stream, left, top, left + LINE_MILLIMETRES, top);
        line(stream, left, top - 1, left, top + 1);
        line(stream, left + LINE_MILLIMETRES, top - 1, left + LINE_MILLIMETRES, top + 1);
        words.draw(stream, x(left), y(top) - margin / 2);
    }

    private String words() {
        return Texts.say(
                "This line is 100 mm long. If it is not, the printer changed the size: print at full "
                        + "size, without fitting to the page. Lay this page over the sheet of labels, {0}, against "
                        + "a light. Where the left edge of the first true label crosses the ruler is how far to "
                        + "shift right, marks left of the long one are negative; where its upper edge does is how "
                        + "far to shift down. Marks are 0.5 mm apart. Add that to the shift this page has: right "
                        + "{1}, down {2} mm.",
                sheet.title(), Numbers.fixed(shift.rightMillimetres(), 1), Numbers.fixed(shift.downMillimetres(), 1));
    }

    private void line(PDPageContentStream stream, double fromX, double fromY, double toX, double toY)
            throws IOException {
        stream.moveTo(x(fromX), y(fromY));
        stream.lineTo(x(toX), y(toY));
        stream.stroke();
    }

    private static float x(double millimetres) {
        return PrinterDots.points(millimetres);
    }

    private float y(double millimetres) {
        return PrinterDots.points(sheet.paper().heightMillimetres() - millimetres);
    }
}
