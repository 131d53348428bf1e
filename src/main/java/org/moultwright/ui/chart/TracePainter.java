package org.moultwright.ui.chart;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.moultwright.text.DayWords;
import org.moultwright.ui.theme.Token;

/** Puts one trace on a canvas. */
final class TracePainter {
    private static final double ENVELOPE_OPACITY = 0.28;
    private static final double LINE_PIXELS = 1.8;
    private static final double NARROWEST_GAP_PIXELS = 3;
    private static final double LEAST_SPAN_CELSIUS = 4;
    private static final double LONE_DOT_PIXELS = 3;

    /** Where there are more gaps, as between readings taken by hand, their words would hide each other. */
    private static final int MOST_GAPS_TOLD = 8;

    private final Pen pen;
    private final Trace trace;
    private final CalendarAxis time;
    private final ValueAxis celsius;
    private final Envelope envelope;
    private final double stripTop;

    TracePainter(Pen pen, Trace trace, CalendarAxis time, double height) {
        this.pen = pen;
        this.trace = trace;
        this.time = time;
        this.envelope = Envelope.of(trace.rollUps(), time, trace.longestBridged());
        double top = 1.9 * pen.em();
        double stripRoom = trace.residents().isEmpty() ? 0 : 2 * pen.em();
        double bottom = Math.max(top + 1, height - 1.9 * pen.em() - stripRoom);
        this.stripTop = bottom + 2.2 * pen.em();
        this.celsius = celsius(top, bottom);
    }

    void paint() {
        trace.target()
                .ifPresent(band -> pen.fill(
                        pen.colour(Token.ACCENT_SOFT),
                        time.left(),
                        celsius.y(band.highCelsius()),
                        time.right() - time.left(),
                        celsius.y(band.lowCelsius()) - celsius.y(band.highCelsius())));
        grid();
        envelope.gaps().forEach(this::gap);
        lowToHigh();
        line();
        trace.alarms().forEach(this::alarm);
        trace.residents().forEach(this::resident);
    }

    /** A thin line through an instant and a dot on the reading nearest to it. */
    void cursor(Instant instant) {
        double x = time.x(instant);
        pen.vertical(pen.colour(Token.INK), 1, x, celsius.top(), celsius.bottom());
        TraceChart.nearest(trace, instant)
                .ifPresent(nearest -> pen.dot(
                        pen.colour(Token.SURFACE),
                        pen.colour(Token.ACCENT),
                        Math.max(time.left(), time.x(Instant.ofEpochMilli(nearest.firstMillis()))),
                        celsius.y(nearest.meanCelsius()),
                        4));
    }

    /** Whole degrees round all that is shown, and not so few that a tenth of a degree looks like a cliff. */
    private ValueAxis celsius(double top, double bottom) {
        double low = trace.target().map(Trace.Band::lowCelsius).orElse(Double.POSITIVE_INFINITY);
        double high = trace.target().map(Trace.Band::highCelsius).orElse(Double.NEGATIVE_INFINITY);
        for (Envelope.Column column : envelope.columns()) {
            low = Math.min(low, column.low());
            high = Math.max(high, column.high());
        }
        if (low > high) {
            return new ValueAxis(20, 30, top, bottom);
        }
        double missing = Math.max(0, LEAST_SPAN_CELSIUS - (high - low)) / 2;
        return new ValueAxis(Math.floor(low - missing - 0.3), Math.ceil(high + missing + 0.3), top, bottom);
    }

    private void grid() {
        for (double value : celsius.ticks(2 * pen.em())) {
            double y = celsius.y(value);
            pen.horizontal(pen.colour(Token.LINE), y, time.left(), time.right());
            boolean isTop = y < celsius.top() + 1.6 * pen.em();
            String word = value == Math.rint(value)
                    ? String.format(Locale.ROOT, "%.0f", value)
                    : String.format(Locale.ROOT, "%.1f", value);
            pen.words(isTop ? word + " °C" : word, Type.CAPTION, Token.MUTED, time.left() - 8, y, TextAlignment.RIGHT);
        }
        for (CalendarAxis.Tick tick : time.ticks(4.2 * pen.em())) {
            double x = time.x(tick.at());
            pen.vertical(pen.colour(Token.LINE), 1, x, celsius.top(), celsius.bottom());
            double wordWidth = pen.width(tick.word(), Type.CAPTION);
            if (x + 4 + wordWidth <= time.right() + 8) {
                pen.words(
                        tick.word(),
                        Type.CAPTION,
                        Token.MUTED,
                        x + 4,
                        celsius.bottom() + 0.95 * pen.em(),
                        TextAlignment.LEFT);
            }
        }
    }

    private void gap(Envelope.Gap gap) {
        double left = time.x(Instant.ofEpochMilli(gap.fromEpochMillis()));
        double width = time.x(Instant.ofEpochMilli(gap.toEpochMillis())) - left;
        if (width < NARROWEST_GAP_PIXELS) {
            return;
        }
        pen.fill(pen.colour(Token.SURFACE), left, celsius.top(), width, celsius.bottom() - celsius.top());
        pen.fill(pen.palette().hatch(Token.DEAD), left, celsius.top(), width, celsius.bottom() - celsius.top());
        if (envelope.gaps().size() > MOST_GAPS_TOLD) {
            return;
        }
        String words = "silent " + DayWords.age(Duration.ofMillis(gap.toEpochMillis() - gap.fromEpochMillis()));
        double wordsWidth = pen.width(words, Type.CAPTION);
        boolean fitsRight = left + width + 6 + wordsWidth < time.right();
        pen.words(
                words,
                Type.CAPTION,
                Token.MUTED,
                fitsRight ? left + width + 6 : left - 6,
                celsius.top() + 0.8 * pen.em(),
                fitsRight ? TextAlignment.LEFT : TextAlignment.RIGHT);
    }

    private void lowToHigh() {
        Color colour = pen.colour(Token.ACCENT);
        pen.alpha(ENVELOPE_OPACITY);
        for (Envelope.Column column : envelope.columns()) {
            double top = celsius.y(column.high());
            pen.fill(colour, time.left() + column.pixel(), top - 0.5, 1, celsius.y(column.low()) - top + 1);
        }
        pen.alpha(1);
    }

    private void line() {
        List<Envelope.Column> columns = envelope.columns();
        double[] xs = new double[columns.size()];
        double[] ys = new double[columns.size()];
        int count = 0;
        for (Envelope.Column column : columns) {
            if (column.afterGap()) {
                stroke(xs, ys, count);
                count = 0;
            }
            xs[count] = time.left() + column.pixel() + 0.5;
            ys[count] = celsius.y(column.mean());
            count++;
        }
        stroke(xs, ys, count);
    }

    /** A line, or a dot where there is one reading with none near it. */
    private void stroke(double[] xs, double[] ys, int count) {
        if (count == 1) {
            pen.dot(pen.colour(Token.SURFACE), pen.colour(Token.ACCENT), xs[0], ys[0], LONE_DOT_PIXELS);
        } else {
            pen.polyline(pen.colour(Token.ACCENT), LINE_PIXELS, xs, ys, count);
        }
    }

    private void alarm(Trace.Stretch alarm) {
        double left = Math.max(time.left(), time.x(alarm.from()));
        double right = Math.min(time.right(), Math.max(left + 6, time.x(alarm.to())));
        double y = celsius.top() - 0.75 * pen.em();
        pen.bar(pen.colour(Token.BAD), left, y - 3, right - left, 6, 2);
        boolean fitsRight = right + 6 + pen.width(alarm.words(), Type.CAPTION_STRONG) < time.right();
        pen.words(
                alarm.words(),
                Type.CAPTION_STRONG,
                Token.BAD,
                fitsRight ? right + 6 : left - 6,
                y,
                fitsRight ? TextAlignment.LEFT : TextAlignment.RIGHT);
    }

    private void resident(Trace.Stretch stretch) {
        double left = Math.max(time.left(), time.x(stretch.from()));
        double right = Math.min(time.right(), time.x(stretch.to()));
        if (right <= left) {
            return;
        }
        double height = 1.35 * pen.em();
        pen.bar(pen.colour(Token.SUNK), left, stripTop, right - left, height, 2);
        if (pen.width(stretch.words(), Type.CAPTION) + 12 < right - left) {
            pen.words(stretch.words(), Type.CAPTION, Token.MUTED, left + 6, stripTop + height / 2, TextAlignment.LEFT);
        }
    }
}
