package org.moultwright.document;

/** Lengths in whole dots of a 300 dpi printer; printers of 600 and 1200 dpi divide them evenly. */
final class PrinterDots {
    static final double DOT_MILLIMETRES = 25.4 / 300;

    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

    private PrinterDots() {}

    /** The nearest whole dot. */
    static double snapped(double millimetres) {
        return Math.round(millimetres / DOT_MILLIMETRES) * DOT_MILLIMETRES;
    }

    /** How many whole dots fit. */
    static int within(double millimetres) {
        return (int) Math.floor(millimetres / DOT_MILLIMETRES + 1e-9);
    }

    /** In the unit of PDF. */
    static float points(double millimetres) {
        return (float) (millimetres * POINTS_PER_MILLIMETRE);
    }

    static double millimetres(double points) {
        return points / POINTS_PER_MILLIMETRE;
    }
}
