package org.moultwright.boot.command;

/** Numbers as they stand in a JSON document. */
final class Rounded {
    private Rounded() {}

    /** A number to the nearest 1 / {@code scale}. */
    static double to(double value, double scale) {
        return Math.rint(value * scale) / scale;
    }
}
