package org.moultwright.domain.label;

import org.moultwright.domain.Require;

/**
 * How far everything is moved on the paper to make up for a printer that feeds it a little askew.
 *
 * @param rightMillimetres to the right, negative to the left, within [-5, 5]
 * @param downMillimetres downwards, negative upwards, within [-5, 5]
 */
public record PrintShift(double rightMillimetres, double downMillimetres) {
    public static final double MOST_MILLIMETRES = 5;
    public static final PrintShift NONE = new PrintShift(0, 0);

    public PrintShift {
        Require.within("rightMillimetres", rightMillimetres, -MOST_MILLIMETRES, MOST_MILLIMETRES);
        Require.within("downMillimetres", downMillimetres, -MOST_MILLIMETRES, MOST_MILLIMETRES);
    }
}
