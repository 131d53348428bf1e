package org.moultwright.ui.chart;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import javafx.scene.text.TextAlignment;
import org.moultwright.ui.theme.Token;

/** Two numbers against each other: axes, and the marks of points, levels and curves upon them. */
final class Plane {
    private static final double LEFT_EMS = 4;
    private static final double BOTTOM_EMS = 2.9;
    private static final double TOP_EMS = 1.2;
    private static final double RIGHT_EMS = 1;
    private static final int CURVE_STEPS = 48;

    private final Pen pen;
    private final ValueAxis across;
    private final ValueAxis up;

    /** A plane over the whole of a canvas, from the low to the high numbers of both axes. */
    Plane(Pen pen, double width, double height, double[] acrossRange, double[] upRange) {
        this.pen = pen;
        double left = LEFT_EMS * pen.em();
        double right = Math.max(left + 1, width - RIGHT_EMS * pen.em());
        double top = TOP_EMS * pen.em();
        double bottom = Math.max(top + 1, height - BOTTOM_EMS * pen.em());
        this.across = new ValueAxis(acrossRange[0], acrossRange[1], right, left);
        this.up = new ValueAxis(upRange[0], upRange[1], top, bottom);
    }

    /** Hairlines with their numbers, and what each axis counts. */
    void grid(String acrossWords, String upWords) {
        for (double value : up.ticks(2 * pen.em())) {
            pen.horizontal(pen.colour(Token.LINE), up.y(value), left(), right());
            pen.words(number(value), Type.CAPTION, Token.MUTED, left() - 8, up.y(value), TextAlignment.RIGHT);
        }
        for (double value : across.ticks(4 * pen.em())) {
            pen.vertical(pen.colour(Token.LINE), 1, across.y(value), up.top(), up.bottom());
            double y = up.bottom() + 0.9 * pen.em();
            pen.words(number(value), Type.CAPTION, Token.MUTED, across.y(value), y, TextAlignment.CENTER);
        }
        double foot = up.bottom() + 2.1 * pen.em();
        pen.words(acrossWords, Type.CAPTION, Token.MUTED, (left() + right()) / 2, foot, TextAlignment.CENTER);
        pen.words(upWords, Type.CAPTION, Token.MUTED, left() + 6, up.top() - 0.5 * pen.em(), TextAlignment.LEFT);
    }

    /** A point with a bar of so much each way. */
    void point(double x, double y, double reach) {
        double at = across.y(x);
        pen.vertical(pen.colour(Token.INK), 1.5, at, up.y(y + reach), up.y(y - reach));
        pen.dot(pen.colour(Token.ACCENT), pen.colour(Token.SURFACE), at, up.y(y), 4.5);
    }

    /** A level right across, with words above its right end. */
    void level(double y, double dash, String words) {
        double at = up.y(y);
        double[] xs = {left(), right()};
        double[] ys = {at, at};
        if (dash > 0) {
            pen.dashed(pen.colour(Token.INK), 1.2, dash, dash, xs, ys);
        } else {
            pen.polyline(pen.colour(Token.INK), 1.2, xs, ys, xs.length);
        }
        pen.words(words, Type.CAPTION, Token.INK, right() - 4, at - 0.6 * pen.em(), TextAlignment.RIGHT);
    }

    /** A soft ground between two levels. */
    void ground(Token colour, double low, double high) {
        pen.fill(pen.colour(colour), left(), up.y(high), right() - left(), up.y(low) - up.y(high));
    }

    /** A line with a soft ground so far each way about it. */
    void curve(DoubleUnaryOperator middle, DoubleUnaryOperator reach) {
        double[] xs = new double[CURVE_STEPS + 1];
        double[] ys = new double[CURVE_STEPS + 1];
        double[] roundXs = new double[2 * xs.length];
        double[] roundYs = new double[2 * xs.length];
        for (int i = 0; i <= CURVE_STEPS; i++) {
            double x = across.low() + (across.high() - across.low()) * i / CURVE_STEPS;
            double y = middle.applyAsDouble(x);
            xs[i] = across.y(x);
            ys[i] = within(up.y(y));
            roundXs[i] = xs[i];
            roundYs[i] = within(up.y(y + reach.applyAsDouble(x)));
            roundXs[roundXs.length - 1 - i] = xs[i];
            roundYs[roundYs.length - 1 - i] = within(up.y(y - reach.applyAsDouble(x)));
        }
        pen.polygon(pen.colour(Token.ACCENT_SOFT), roundXs, roundYs);
        pen.polyline(pen.colour(Token.ACCENT), 1.8, xs, ys, xs.length);
    }

    private double within(double y) {
        return Math.max(up.top(), Math.min(up.bottom(), y));
    }

    private double left() {
        return across.bottom();
    }

    private double right() {
        return across.top();
    }

    private static String number(double value) {
        // Adding 0 turns a zero with a sign into one without.
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value + 0.0)
                : String.format(
                        Locale.ROOT, Math.abs(value * 10 - Math.rint(value * 10)) < 1e-6 ? "%.1f" : "%.2f", value);
    }
}
