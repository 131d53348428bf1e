package org.moultwright.document;

import org.moultwright.domain.label.Box;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.DocumentException.Reason;

/**
 * Where things stand on one label: the code square with its quiet zone at the left, the text right of it.
 *
 * @param square the code square's quiet zone, on whole printer dots
 * @param moduleDots printer dots to one side of a module
 * @param text where the text may stand
 */
record LabelLayout(Box square, int moduleDots, Box text) {
    /** The smallest module that always decoded from a clean 300 dpi print: 0.254 mm. Measured. */
    static final int SMALLEST_MODULE_DOTS = 3;

    /** The square takes no more of the label's width than leaves the words their room. */
    private static final double SQUARE_SHARE = 0.45;

    /** Printers leave a few mm of the paper's edge blank, and some labels reach it. */
    private static final double MARGIN_SHARE = 0.06;

    /** The largest module that fits. */
    static LabelLayout of(Box label, int modulesAcross) {
        double room = Math.min(label.heightMillimetres(), label.widthMillimetres() * SQUARE_SHARE);
        int moduleDots = PrinterDots.within(room) / modulesAcross;
        if (moduleDots < SMALLEST_MODULE_DOTS) {
            throw new DocumentException(
                    Reason.LABEL_TOO_SMALL,
                    "A label of %.1f × %.1f mm is too small for this code."
                            .formatted(label.widthMillimetres(), label.heightMillimetres()));
        }
        double side = moduleDots * modulesAcross * PrinterDots.DOT_MILLIMETRES;
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
        return new LabelLayout(square, moduleDots, text);
    }

    double moduleMillimetres() {
        return moduleDots * PrinterDots.DOT_MILLIMETRES;
    }
}
