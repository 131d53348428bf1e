package org.moultwright.ui.chart;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import org.moultwright.ui.theme.Token;

/** Puts one ribbon on a canvas. */
final class RibbonPainter {
    private static final double EXPECTED_OPACITY = 0.42;
    private static final double TICK_PIXELS = 4;
    private static final double PEARL_RADIUS_PIXELS = 7;
    private static final double INSIDE_PIXELS = 16;

    private final Pen pen;
    private final CalendarAxis calendar;
    private final ValueAxis animals;

    RibbonPainter(Pen pen, CalendarAxis calendar, ValueAxis animals) {
        this.pen = pen;
        this.calendar = calendar;
        this.animals = animals;
    }

    void paint(Ribbon ribbon) {
        if (ribbon.inside().isEmpty()) {
            layingToPull(ribbon);
        } else {
            inside(ribbon);
        }
        bands(ribbon.past());
        pen.alpha(EXPECTED_OPACITY);
        bands(ribbon.expected());
        pen.alpha(1);
        bounds(ribbon.expected());
        ribbon.checks().forEach(this::check);
    }

    /** A thin line through a day with a dot on the top of the living. */
    void cursor(Ribbon.Point point, Instant day) {
        double x = calendar.x(day);
        pen.vertical(pen.colour(Token.INK), 1, x, animals.top(), animals.bottom() + pen.pixels(TICK_PIXELS));
        double y = animals.y(point.potted() + point.alive());
        pen.dot(pen.colour(Token.SURFACE), pen.colour(Token.INK), Math.floor(x) + 0.5, y, 3.5);
    }

    private void layingToPull(Ribbon ribbon) {
        if (ribbon.laid().isEmpty()) {
            return;
        }
        double middle = animals.y(ribbon.mostAnimals() / 2);
        double x = calendar.x(ribbon.laid().get());
        Instant end = ribbon.past().isEmpty()
                ? ribbon.pulled().orElse(calendar.to())
                : ribbon.past().get(0).at();
        pen.dotted(pen.colour(Token.MUTED), middle, x + pen.pixels(PEARL_RADIUS_PIXELS + 3), calendar.x(end) - 3);
        pen.dot(pen.colour(Token.EGG), pen.colour(Token.MUTED), x, middle, PEARL_RADIUS_PIXELS);
        ribbon.pulled()
                .ifPresent(pulled -> pen.vertical(
                        pen.colour(Token.INK),
                        1.2,
                        calendar.x(pulled),
                        animals.y(ribbon.mostAnimals()) - pen.pixels(TICK_PIXELS),
                        animals.bottom() + pen.pixels(TICK_PIXELS)));
    }

    /** Pale as everything nobody has seen, from the laying to the last stage, and on to the end of the calendar. */
    private void inside(Ribbon ribbon) {
        double middle = (animals.top() + animals.bottom()) / 2;
        pen.alpha(EXPECTED_OPACITY);
        for (int i = 0; i < ribbon.inside().size(); i++) {
            Ribbon.Inside part = ribbon.inside().get(i);
            double from = calendar.x(part.from());
            double to = i + 1 < ribbon.inside().size()
                    ? calendar.x(ribbon.inside().get(i + 1).from())
                    : calendar.x(calendar.to());
            double high = pen.pixels(INSIDE_PIXELS);
            double top = middle - high / 2;
            pen.fill(pen.colour(Token.of(part.stage())), from, top, Math.max(0, to - from), high);
        }
        pen.alpha(1);
        double laid = calendar.x(ribbon.inside().get(0).from());
        pen.dot(pen.colour(Token.EGG), pen.colour(Token.MUTED), laid, middle, PEARL_RADIUS_PIXELS);
    }

    private void bands(List<Ribbon.Point> points) {
        if (points.size() < 2) {
            return;
        }
        int count = points.size();
        double[] floor = new double[count];
        for (RibbonBands.Band band : RibbonBands.FROM_THE_FLOOR) {
            double[] top = new double[count];
            for (int i = 0; i < count; i++) {
                top[i] = floor[i] + band.animals().applyAsDouble(points.get(i));
            }
            if (!Arrays.equals(floor, top)) {
                pen.polygon(paint(band.token()), outline(xs(points)), outline(ys(top), ys(floor)));
            }
            floor = top;
        }
    }

    private Paint paint(Token token) {
        return token == Token.DEAD ? pen.palette().hatch(Token.DEAD) : pen.colour(token);
    }

    /** Where the 80 % interval of the living ends, above and below the expected top of colour. */
    private void bounds(List<Ribbon.Point> expected) {
        List<Ribbon.Point> uncertain =
                expected.stream().filter(Ribbon.Point::isExpected).toList();
        if (uncertain.size() >= 2) {
            bound(uncertain, point -> point.potted() + point.aliveLow());
            bound(uncertain, point -> point.potted() + point.aliveHigh());
        }
    }

    private void bound(List<Ribbon.Point> points, ToDoubleFunction<Ribbon.Point> height) {
        Color colour = pen.colour(Token.MUTED);
        double[] heights = points.stream().mapToDouble(height).toArray();
        pen.dashed(colour, 1.2, 4, 3, xs(points), ys(heights));
    }

    private void check(Instant at) {
        double y = animals.bottom() + pen.pixels(2);
        pen.vertical(pen.colour(Token.MUTED), 1.2, calendar.x(at), y, y + pen.pixels(TICK_PIXELS));
    }

    private double[] xs(List<Ribbon.Point> points) {
        return points.stream().mapToDouble(point -> calendar.x(point.at())).toArray();
    }

    private double[] ys(double[] values) {
        return Arrays.stream(values).map(animals::y).toArray();
    }

    private static double[] outline(double[] xs) {
        return outline(xs, xs);
    }

    /** There along the first line, back along the second. */
    private static double[] outline(double[] there, double[] back) {
        double[] outline = Arrays.copyOf(there, there.length + back.length);
        for (int i = 0; i < back.length; i++) {
            outline[there.length + i] = back[back.length - 1 - i];
        }
        return outline;
    }
}
