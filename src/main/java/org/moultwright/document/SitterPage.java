package org.moultwright.document;

import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.moultwright.language.Texts;
import org.moultwright.workflow.SitterSheet;
import org.moultwright.workflow.SitterSheet.Tray;

/**
 * The sitter's page at one size of type: pieces of text and lines with their places, to be measured, then drawn.
 *
 * <p>Places are in points from the upper left corner of the paper.
 */
final class SitterPage {
    private static final float MARGIN = PrinterDots.points(15);
    private static final float GAP = PrinterDots.points(6);
    private static final float BULLET = PrinterDots.points(5);
    private static final float CODE_SHARE = 0.19f;
    private static final float PLACE_SHARE = 0.17f;

    /** In sizes: room for "Wed 13" and its box. */
    private static final float TICK_WIDTH = 5.2f;

    /** In sizes: room for what a display reads, in a hand's writing. */
    private static final float READING_WIDTH = 4f;

    private final LabelFonts fonts;
    private final float size;
    private final float width;
    private final float height;
    private final PageSketch sketch = new PageSketch();
    private float top = MARGIN;

    SitterPage(SitterSheet sheet, List<Tray> rows, LabelFonts fonts, float size) {
        this.fonts = fonts;
        this.size = size;
        this.width = PrinterDots.points(sheet.paper().widthMillimetres()) - 2 * MARGIN;
        this.height = PrinterDots.points(sheet.paper().heightMillimetres());
        head(sheet);
        lists(sheet.lists());
        ticks(sheet.days());
        trays(rows);
        top += GAP / 2;
        top += add(sheet.note(), false, size - 1, MARGIN, top, width);
    }

    boolean fits() {
        return top <= height - MARGIN;
    }

    void draw(PDPageContentStream stream) {
        sketch.draw(stream, height);
    }

    private void head(SitterSheet sheet) {
        top += add(sheet.title(), true, size * 1.9f, MARGIN, top, width);
        top += add(sheet.dates(), true, size * 1.3f, MARGIN, top, width);
        top += GAP / 2;
        float high = size * 2.4f;
        sketch.frame(MARGIN, top, width, high);
        add(Texts.say("Call: {0}", sheet.phone()), true, size * 1.3f, MARGIN + GAP / 2, top + high / 6, width - GAP);
        top += high + GAP;
    }

    private void lists(SitterSheet.Lists lists) {
        float column = (width - GAP) / 2;
        float start = top;
        list(Texts.say("Every day"), lists.toDo(), MARGIN, column);
        float left = top;
        top = start;
        list(Texts.say("Call when"), lists.call(), MARGIN + column + GAP, column);
        top = Math.max(left, top) + GAP / 2;
        list(Texts.say("Never"), lists.never(), MARGIN, width);
        top += GAP / 2;
    }

    private void list(String title, List<String> sentences, float left, float column) {
        top += add(title, true, size * 1.2f, left, top, column);
        for (int i = 0; i < sentences.size(); i++) {
            add(i + 1 + ".", false, size, left, top, BULLET);
            top += add(sentences.get(i), false, size, left + BULLET, top, column - BULLET) + size * 0.2f;
        }
    }

    /** A box for every day, to be ticked, and a line for what the display reads. */
    private void ticks(List<String> days) {
        top += add(
                        Texts.say("Tick the day when all is done, and write what the display reads"),
                        true,
                        size * 1.2f,
                        MARGIN,
                        top,
                        width)
                + size * 0.2f;
        float box = size;
        float named = size * TICK_WIDTH;
        float reading = size * READING_WIDTH;
        float step = named + reading + size;
        float left = MARGIN;
        for (String day : days) {
            if (left + step > MARGIN + width) {
                left = MARGIN;
                top += size * 1.6f;
            }
            sketch.frame(left, top + size * 0.2f, box, box);
            add(day, false, size - 1, left + box * 1.3f, top + size * 0.1f, named);
            sketch.rule(left + named, top + size * 1.2f, reading);
            left += step;
        }
        top += size * 1.6f + GAP / 2;
    }

    private void trays(List<Tray> rows) {
        row(new Tray(Texts.say("Tray"), Texts.say("where"), Texts.say("what to expect in these days")), true);
        rows.forEach(tray -> row(tray, false));
        rule();
    }

    private void row(Tray tray, boolean isHead) {
        rule();
        float code = width * CODE_SHARE;
        float place = width * PLACE_SHARE;
        float start = top + size * 0.15f;
        float high = Math.max(
                add(tray.code(), true, size, MARGIN, start, code - GAP / 2),
                add(tray.place(), isHead, size, MARGIN + code, start, place - GAP / 2));
        float said = add(tray.expected(), isHead, size, MARGIN + code + place, start, width - code - place);
        top = start + Math.max(high, said) + size * 0.15f;
    }

    private void rule() {
        sketch.rule(MARGIN, top, width);
    }

    private float add(String words, boolean isStrong, float points, float left, float from, float column) {
        return sketch.add(isStrong ? fonts.strong() : fonts.plain(), words, points, left, from, column);
    }
}
