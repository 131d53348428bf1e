package org.moultwright.document;

import org.moultwright.domain.label.Box;
import org.moultwright.domain.label.LabelShape;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.DocumentException.Reason;

/**
 * Where things stand on one label. On a rectangle: the code square with its quiet zone at the left, the text right of it.
 * On a round one: the square above, the text centred beneath.
 *
 * @param square the code square's quiet zone, on whole printer dots
 * @param moduleDots printer dots to one side of a module
 * @param text where the text may stand
 * @param isCentred whether the text stands in the middle of its room
 */
record LabelLayout(Box square, int moduleDots, Box text, boolean isCentred) {
    /** The smallest module that always decoded from a clean 300 dpi print: 0.254 mm. Measured. */
    static final int SMALLEST_MODULE_DOTS = 3;

    /** The square takes no more of the label's width than leaves the words their room. */
    private static final double SQUARE_SHARE = 0.45;

    /** Printers leave a few mm of the paper's edge blank, and some labels reach it. */
    private static final double MARGIN_SHARE = 0.06;

    /** In radii of a round label: the square's side, how far everything keeps from its edge, where the text ends. */
    private static final double ROUND_SQUARE = 0.95;

    private static final double ROUND_INSIDE = 0.94;
    private static final double ROUND_TEXT_END = 0.78;

    /** How many printer dots there are for the code square on a label. */
    static int roomDots(Box label, LabelShape shape) {
        return PrinterDots.within(
                shape == LabelShape.ROUND
                        ? label.widthMillimetres() / 2 * ROUND_SQUARE
                        : Math.min(label.heightMillimetres(), label.widthMillimetres() * SQUARE_SHARE));
    }

    /** The largest module that fits. */
    static LabelLayout of(Box label, LabelShape shape, int modulesAcross) {
        int moduleDots = roomDots(label, shape) / modulesAcross;
        if (moduleDots < SMALLEST_MODULE_DOTS) {
            throw new DocumentException(
                    Reason.LABEL_TOO_SMALL,
                    Texts.say(
                            "A label of {0} × {1} mm is too small for this code.",
                            Numbers.fixed(label.widthMillimetres(), 1), Numbers.fixed(label.heightMillimetres(), 1)));
        }
        double side = moduleDots * modulesAcross * PrinterDots.DOT_MILLIMETRES;
        return shape == LabelShape.ROUND ? round(label, moduleDots, side) : rectangle(label, moduleDots, side);
    }

    /** Where the text stands on a label without a square: as much of it as a printer can be trusted with. */
    static Box wordsAlone(Box label, LabelShape shape) {
        double share = shape == LabelShape.ROUND ? (1 - ROUND_INSIDE * Math.sqrt(0.5)) / 2 : MARGIN_SHARE;
        double aside = label.widthMillimetres() * share;
        double above = label.heightMillimetres() * share;
        return new Box(
                label.leftMillimetres() + aside,
                label.topMillimetres() + above,
                label.widthMillimetres() - 2 * aside,
                label.heightMillimetres() - 2 * above);
    }

    private static LabelLayout rectangle(Box label, int moduleDots, double side) {
        double inset = (label.heightMillimetres() - side) / 2;
        Box square = new Box(
                PrinterDots.snapped(label.leftMillimetres() + Math.min(inset, side * 0.04)),
                PrinterDots.snapped(label.topMillimetres() + inset),
                side,
                side);
        double margin = label.widthMillimetres() * MARGIN_SHARE;
        Box text = new Box(
                square.rightMillimetres(),
                label.topMillimetres(),
                label.rightMillimetres() - margin - square.rightMillimetres(),
                label.heightMillimetres());
        return new LabelLayout(square, moduleDots, text, false);
    }

    /** The square as high as its corners allow, the words in what is left beneath it. */
    private static LabelLayout round(Box label, int moduleDots, double side) {
        double radius = label.widthMillimetres() / 2;
        double middle = label.leftMillimetres() + radius;
        double centre = label.topMillimetres() + radius;
        double inside = radius * ROUND_INSIDE;
        Box square = new Box(
                PrinterDots.snapped(middle - side / 2),
                PrinterDots.snapped(centre - Math.sqrt(inside * inside - side * side / 4)),
                side,
                side);
        double end = radius * ROUND_TEXT_END;
        double half = Math.sqrt(inside * inside - end * end);
        Box text =
                new Box(middle - half, square.bottomMillimetres(), 2 * half, centre + end - square.bottomMillimetres());
        return new LabelLayout(square, moduleDots, text, true);
    }

    double moduleMillimetres() {
        return moduleDots * PrinterDots.DOT_MILLIMETRES;
    }
}
