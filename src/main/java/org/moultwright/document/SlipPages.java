package org.moultwright.document;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.moultwright.language.Texts;
import org.moultwright.workflow.HandOverSlip;
import org.moultwright.workflow.HandOverSlip.Lot;

/** A hand-over slip laid out: who to whom, what, the cautions and two signatures, on as many pages as that takes. */
final class SlipPages {
    private static final float MARGIN = PrinterDots.points(18);
    private static final float GAP = PrinterDots.points(5);
    private static final float SIZE = 10.5f;

    /** Room for an address by hand. */
    private static final float PARTY_HEIGHT = PrinterDots.points(34);

    private static final float SIGNATURE_HEIGHT = PrinterDots.points(24);

    /** A lot's codes are broken into pieces of so many, so that none is higher than a page. */
    private static final int CODES_IN_PIECE = 60;

    private final HandOverSlip slip;
    private final LabelFonts fonts;
    private final float width;
    private final float bottom;
    private final List<PageSketch> pages = new ArrayList<>();
    private PageSketch page = new PageSketch();
    private float top = MARGIN;

    SlipPages(HandOverSlip slip, LabelFonts fonts, float pageWidth, float pageHeight) {
        this.slip = slip;
        this.fonts = fonts;
        this.width = pageWidth - 2 * MARGIN;
        this.bottom = pageHeight - MARGIN - 2 * SIZE;
    }

    List<PageSketch> laid() {
        head();
        parties();
        top += GAP;
        slip.lots().forEach(this::lot);
        rule();
        words(fonts.strong(), slip.total(), SIZE * 1.15f);
        top += GAP;
        slip.cautions().forEach(caution -> {
            words(fonts.plain(), caution, SIZE - 1);
            top += SIZE * 0.3f;
        });
        signatures();
        pages.add(page);
        number();
        return pages;
    }

    private void head() {
        words(fonts.strong(), slip.title(), SIZE * 1.9f);
        words(fonts.plain(), slip.day(), SIZE * 1.2f);
        top += GAP;
    }

    private void parties() {
        float column = (width - GAP) / 2;
        float high = Math.max(
                party(Texts.say("From"), slip.from(), MARGIN, column),
                party(Texts.say("To"), slip.to(), MARGIN + column + GAP, column));
        page.frame(MARGIN, top, column, high);
        page.frame(MARGIN + column + GAP, top, column, high);
        top += high;
    }

    private float party(String word, List<String> lines, float left, float column) {
        float inside = GAP / 2;
        float at = top + inside;
        at += page.add(fonts.strong(), word, SIZE, left + inside, at, column - GAP);
        for (String line : lines) {
            at += page.add(fonts.plain(), line, SIZE, left + inside, at, column - GAP);
        }
        return Math.max(PARTY_HEIGHT, at + inside - top);
    }

    private void lot(Lot lot) {
        rule();
        words(fonts.strong(), Texts.say("{0} of", lot.what()), SIZE);
        words(fonts.italic(), lot.taxon(), SIZE * 1.15f);
        words(fonts.plain(), lot.origin(), SIZE - 1);
        List<String> codes = lot.codes();
        for (int from = 0; from < codes.size(); from += CODES_IN_PIECE) {
            List<String> piece = codes.subList(from, Math.min(from + CODES_IN_PIECE, codes.size()));
            words(
                    fonts.plain(),
                    from == 0 ? Texts.say("Pots: {0}", String.join(", ", piece)) : String.join(", ", piece),
                    SIZE);
        }
        top += SIZE * 0.4f;
    }

    private void signatures() {
        float column = (width - GAP) / 2;
        needs(SIGNATURE_HEIGHT + 2 * SIZE);
        top += SIGNATURE_HEIGHT;
        page.rule(MARGIN, top, column);
        page.rule(MARGIN + column + GAP, top, column);
        page.add(fonts.plain(), Texts.say("Handed over by, place, date"), SIZE - 2, MARGIN, top, column);
        page.add(fonts.plain(), Texts.say("Taken over by, place, date"), SIZE - 2, MARGIN + column + GAP, top, column);
        top += 2 * SIZE;
    }

    private void rule() {
        needs(4 * SIZE);
        page.rule(MARGIN, top, width);
        top += SIZE * 0.3f;
    }

    private void words(PDFont font, String text, float size) {
        needs(SheetText.of(text, font, size, width).height());
        top += page.add(font, text, size, MARGIN, top, width);
    }

    /** Turns to a new page where this one has no room for so much. */
    private void needs(float height) {
        if (top + height > bottom) {
            pages.add(page);
            page = new PageSketch();
            top = MARGIN;
        }
    }

    /** So that no page gets lost unseen. */
    private void number() {
        for (int i = 0; i < pages.size(); i++) {
            String place = Texts.say("{0}, {1}, page {2} of {3}", slip.title(), slip.day(), i + 1, pages.size());
            pages.get(i).add(fonts.plain(), place, SIZE - 2.5f, MARGIN, bottom + SIZE * 0.6f, width);
        }
    }
}
