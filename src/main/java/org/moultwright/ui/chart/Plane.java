package org.moultwright.ui.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import javafx.scene.text.TextAlignment;
import org.moultwright.language.Numbers;
import org.moultwright.language.Scale;
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
    private final Scale acrossScale;
    private final Scale upScale;
    private final List<StairNames.Stair> stairs = new ArrayList<>();

    /** A plane over the whole of a canvas, from the low to the high numbers of both axes. */
    Plane(Pen pen, double width, double height, double[] acrossRange, double[] upRange) {
        this(pen, width, height, acrossRange, upRange, Scale.PLAIN, Scale.PLAIN);
    }

    /** A plane of numbers that are shown in other units than they are kept in. */
    Plane(
            Pen pen,
            double width,
            double height,
            double[] acrossRange,
            double[] upRange,
            Scale acrossScale,
            Scale upScale) {
        this.pen = pen;
        this.acrossScale = acrossScale;
        this.upScale = upScale;
        double left = LEFT_EMS * pen.em();
        double right = Math.max(left + 1, width - RIGHT_EMS * pen.em());
        double top = TOP_EMS * pen.em();
        double bottom = Math.max(top + 1, height - BOTTOM_EMS * pen.em());
        this.across = new ValueAxis(acrossRange[0], acrossRange[1], right, left);
        this.up = new ValueAxis(upRange[0], upRange[1], top, bottom);
    }

    /** Hairlines with their numbers, and what each axis counts. */
    void grid(String acrossWords, String upWords) {
        ValueAxis upShown = up.in(upScale);
        for (double value : upShown.ticks(2 * pen.em())) {
            double y = upShown.y(value);
            pen.horizontal(pen.colour(Token.LINE), y, left(), right());
            pen.words(number(value), Type.CAPTION, Token.MUTED, left() - 8, y, TextAlignment.RIGHT);
        }
        ValueAxis acrossShown = across.in(acrossScale);
        for (double value : acrossShown.ticks(4 * pen.em())) {
            double x = acrossShown.y(value);
            pen.vertical(pen.colour(Token.LINE), 1, x, up.top(), up.bottom());
            double y = up.bottom() + 0.9 * pen.em();
            pen.words(number(value), Type.CAPTION, Token.MUTED, x, y, TextAlignment.CENTER);
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

    /** A stair: each number holds from its place to the next; the last place only ends it. */
    void stair(Token colour, double dash, double[] xs, double[] values) {
        double[] stairXs = new double[2 * values.length];
        double[] stairYs = new double[2 * values.length];
        lay(xs, values, stairXs, stairYs);
        if (dash > 0) {
            pen.dashed(pen.colour(colour), 2, dash, 4, stairXs, stairYs);
        } else {
            pen.polyline(pen.colour(colour), 2, stairXs, stairYs, stairXs.length);
        }
        stairs.add(new StairNames.Stair(stairXs, stairYs));
    }

    /** The stairs' words at their ends, in the order they were drawn, each where no stair runs through it. */
    void stairNames(List<Token> colours, List<String> names) {
        StairNames places = new StairNames(stairs, left(), up.top(), pen.em());
        for (int i = 0; i < names.size(); i++) {
            StairNames.Place place = places.next(i, pen.width(names.get(i), Type.CAPTION_STRONG));
            pen.words(
                    names.get(i),
                    Type.CAPTION_STRONG,
                    colours.get(i),
                    place.right(),
                    place.middle(),
                    TextAlignment.RIGHT);
        }
    }

    /** A soft ground between two stairs. */
    void stairGround(double[] xs, double[] lows, double[] highs) {
        int count = 2 * lows.length;
        double[] lowXs = new double[count];
        double[] lowYs = new double[count];
        double[] highXs = new double[count];
        double[] highYs = new double[count];
        lay(xs, lows, lowXs, lowYs);
        lay(xs, highs, highXs, highYs);
        double[] roundXs = new double[2 * count];
        double[] roundYs = new double[2 * count];
        for (int i = 0; i < count; i++) {
            roundXs[i] = lowXs[i];
            roundYs[i] = lowYs[i];
            roundXs[2 * count - 1 - i] = highXs[i];
            roundYs[2 * count - 1 - i] = highYs[i];
        }
        pen.polygon(pen.colour(Token.ACCENT_SOFT), roundXs, roundYs);
    }

    private void lay(double[] xs, double[] values, double[] stairXs, double[] stairYs) {
        for (int i = 0; i < values.length; i++) {
            stairXs[2 * i] = across.y(xs[i]);
            stairXs[2 * i + 1] = across.y(xs[i + 1]);
            stairYs[2 * i] = within(up.y(values[i]));
            stairYs[2 * i + 1] = stairYs[2 * i];
        }
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
                ? Numbers.fixed(value + 0.0, 0)
                : String.format(
                        Locale.ROOT, Math.abs(value * 10 - Math.rint(value * 10)) < 1e-6 ? "%.1f" : "%.2f", value);
    }
}
