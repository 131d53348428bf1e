package org.moultwright.ui.chart;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Scale;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.ui.theme.Token;

/** Puts one trace on a canvas. */
final class TracePainter {
    private static final double ENVELOPE_OPACITY = 0.28;
    private static final double LINE_PIXELS = 1.8;
    private static final double NARROWEST_GAP_PIXELS = 3;
    private static final double LEAST_SPAN_CELSIUS = 4;
    private static final double LONE_DOT_PIXELS = 3;

    /** How far above the plot alarms are told. */
    private static final double ALARMS_ABOVE_EMS = 0.75;

    private static final double FRAME_PIXELS = 1.2;
    private static final double NARROWEST_FRAME_PIXELS = 5;

    /** Where there are more gaps, as between readings taken by hand, their words would hide each other. */
    private static final int MOST_GAPS_TOLD = 8;

    /** How the lines of other probes are told apart: colour, and dash and pause in pixels. */
    private static final List<Stroke> STROKES =
            List.of(new Stroke(Token.INK, 7, 4), new Stroke(Token.WARN, 2, 3), new Stroke(Token.MUTED, 12, 5));

    private final Pen pen;
    private final Trace trace;
    private final CalendarAxis time;
    private final ValueAxis celsius;
    private final Envelope envelope;
    private final List<Envelope> others;
    private final double stripTop;
    /** How far words about gaps reach. */
    private double gapWordsRight = Double.NEGATIVE_INFINITY;

    TracePainter(Pen pen, Trace trace, CalendarAxis time, double height) {
        this.pen = pen;
        this.trace = trace;
        this.time = time;
        this.envelope = trace.line().readings().envelope(time);
        this.others = trace.others().stream()
                .map(line -> line.readings().envelope(time))
                .toList();
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
        for (int i = 0; i < others.size(); i++) {
            Stroke stroke = STROKES.get(i);
            line(others.get(i), stroke);
        }
        line(envelope, new Stroke(Token.ACCENT, 0, 0));
        trace.remembered().forEach(this::remembered);
        legend();
        trace.alarms().forEach(this::alarm);
        trace.residents().forEach(this::resident);
    }

    /** A thin line through an instant and a dot on the reading nearest to it. */
    void cursor(Instant instant) {
        double x = time.x(instant);
        pen.vertical(pen.colour(Token.INK), 1, x, celsius.top(), celsius.bottom());
        TraceChart.nearest(trace.line(), trace.longestBridged(), instant)
                .ifPresent(i -> pen.dot(
                        pen.colour(Token.SURFACE),
                        pen.colour(Token.ACCENT),
                        time.x(Instant.ofEpochMilli(trace.readings().epochMillis(i))),
                        celsius.y(trace.readings().temperatureCelsius(i)),
                        4));
    }

    /** Whole degrees round all that is shown, and not so few that a tenth of a degree looks like a cliff. */
    private ValueAxis celsius(double top, double bottom) {
        double low = trace.target().map(Trace.Band::lowCelsius).orElse(Double.POSITIVE_INFINITY);
        double high = trace.target().map(Trace.Band::highCelsius).orElse(Double.NEGATIVE_INFINITY);
        for (Envelope shown :
                Stream.concat(Stream.of(envelope), others.stream()).toList()) {
            for (Envelope.Column column : shown.columns()) {
                low = Math.min(low, column.low());
                high = Math.max(high, column.high());
            }
        }
        for (Trace.Remembered known : trace.remembered()) {
            low = Math.min(low, known.lowCelsius());
            high = Math.max(high, known.highCelsius());
        }
        if (low > high) {
            return new ValueAxis(20, 30, top, bottom);
        }
        double missing = Math.max(0, LEAST_SPAN_CELSIUS - (high - low)) / 2;
        return new ValueAxis(Math.floor(low - missing - 0.3), Math.ceil(high + missing + 0.3), top, bottom);
    }

    private void grid() {
        ValueAxis shown = celsius.in(Scale.TEMPERATURE);
        double[] ticks = shown.ticks(2 * pen.em());
        // One number is no scale: in a low plot they stand closer.
        ticks = ticks.length > 1 ? ticks : shown.ticks(1.4 * pen.em());
        for (double value : ticks) {
            double y = shown.y(value);
            pen.horizontal(pen.colour(Token.LINE), y, time.left(), time.right());
            boolean isTop = value == ticks[ticks.length - 1];
            String word = value == Math.rint(value) ? Numbers.fixed(value, 0) : Numbers.fixed(value, 1);
            pen.words(
                    isTop ? word + " " + Degrees.symbol() : word,
                    Type.CAPTION,
                    Token.MUTED,
                    time.left() - 8,
                    y,
                    TextAlignment.RIGHT);
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
        double left = Math.max(time.left(), time.x(Instant.ofEpochMilli(gap.fromEpochMillis())));
        double width = Math.min(time.right(), time.x(Instant.ofEpochMilli(gap.toEpochMillis()))) - left;
        if (width < NARROWEST_GAP_PIXELS) {
            return;
        }
        pen.fill(pen.colour(Token.SURFACE), left, celsius.top(), width, celsius.bottom() - celsius.top());
        pen.fill(pen.palette().hatch(Token.DEAD), left, celsius.top(), width, celsius.bottom() - celsius.top());
        if (envelope.gaps().size() > MOST_GAPS_TOLD) {
            return;
        }
        String words =
                Texts.say("silent {0}", DayWords.age(Duration.ofMillis(gap.toEpochMillis() - gap.fromEpochMillis())));
        double wordsWidth = pen.width(words, Type.CAPTION);
        boolean fitsRight = left + width + 6 + wordsWidth < time.right();
        double from = fitsRight ? left + width + 6 : left - 6 - wordsWidth;
        if (from < Math.max(time.left(), gapWordsRight)) {
            return;
        }
        gapWordsRight = from + wordsWidth + 6;
        pen.words(words, Type.CAPTION, Token.MUTED, from, freeLine(from, from + wordsWidth), TextAlignment.LEFT);
    }

    /**
     * The middle of a line of words: at the top of the plot; where a trace runs there, at its foot, over the legend, or
     * above the plot, where alarms would stand.
     */
    private double freeLine(double left, double right) {
        double top = celsius.top() + 0.8 * pen.em();
        double foot = celsius.bottom() - (trace.others().isEmpty() ? 0.8 : 2.4) * pen.em();
        if (isFree(left, right, top)) {
            return top;
        }
        double above = trace.alarms().isEmpty() ? celsius.top() - ALARMS_ABOVE_EMS * pen.em() : top;
        return isFree(left, right, foot) ? foot : above;
    }

    private boolean isFree(double left, double right, double middle) {
        double half = 0.7 * pen.em();
        return Stream.concat(Stream.of(envelope), others.stream())
                .noneMatch(shown -> shown.reaches(
                        left - time.left(),
                        right - time.left(),
                        celsius.value(middle + half),
                        celsius.value(middle - half)));
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

    private void line(Envelope shown, Stroke stroke) {
        List<Envelope.Column> columns = shown.columns();
        double[] xs = new double[columns.size()];
        double[] ys = new double[columns.size()];
        int count = 0;
        for (Envelope.Column column : columns) {
            if (column.afterGap()) {
                draw(stroke, xs, ys, count);
                count = 0;
            }
            xs[count] = time.left() + column.pixel() + 0.5;
            ys[count] = celsius.y(column.mean());
            count++;
        }
        draw(stroke, xs, ys, count);
    }

    /** A reading with silence on both sides is a dot: a line of one point would not be seen. */
    private void draw(Stroke stroke, double[] xs, double[] ys, int count) {
        if (count == 1) {
            pen.dot(pen.colour(Token.SURFACE), pen.colour(stroke.colour()), xs[0], ys[0], LONE_DOT_PIXELS);
        } else if (stroke.dash() > 0) {
            pen.dashed(
                    pen.colour(stroke.colour()),
                    LINE_PIXELS,
                    stroke.dash(),
                    stroke.pause(),
                    Arrays.copyOf(xs, count),
                    Arrays.copyOf(ys, count));
        } else {
            pen.polyline(pen.colour(stroke.colour()), LINE_PIXELS, xs, ys, count);
        }
    }

    /** A frame over its whole time, since nobody knows when in it the two were; a line where that is too narrow. */
    private void remembered(Trace.Remembered known) {
        double left = Math.max(time.left(), time.x(known.from()) + 1);
        double right = Math.min(time.right(), time.x(known.to()) - 1);
        double top = celsius.y(known.highCelsius());
        double bottom = celsius.y(known.lowCelsius());
        if (right - left >= NARROWEST_FRAME_PIXELS) {
            pen.frame(pen.colour(Token.INK), FRAME_PIXELS, left, top, right - left, bottom - top, 2);
        } else if (right >= time.left() && left <= time.right()) {
            pen.vertical(pen.colour(Token.INK), FRAME_PIXELS, (left + right) / 2, top, bottom);
        }
    }

    /** Which line is whose, where there are several. */
    private void legend() {
        if (trace.others().isEmpty()) {
            return;
        }
        double x = legend(time.left() + 10, trace.line().name(), new Stroke(Token.ACCENT, 0, 0));
        for (int i = 0; i < trace.others().size(); i++) {
            x = legend(x, trace.others().get(i).name(), STROKES.get(i));
        }
    }

    private double legend(double x, String name, Stroke stroke) {
        double y = celsius.bottom() - 0.9 * pen.em();
        double dashRight = x + 2.2 * pen.em();
        double width = pen.width(name, Type.CAPTION);
        pen.fill(pen.colour(Token.SURFACE), x - 5, y - 0.7 * pen.em(), dashRight + width - x + 16, 1.4 * pen.em());
        draw(stroke, new double[] {x, dashRight}, new double[] {y, y}, 2);
        pen.words(name, Type.CAPTION, Token.INK, dashRight + 6, y, TextAlignment.LEFT);
        return dashRight + width + 22;
    }

    private record Stroke(Token colour, double dash, double pause) {}

    private void alarm(Trace.Stretch alarm) {
        double left = Math.max(time.left(), time.x(alarm.from()));
        double right = Math.min(time.right(), Math.max(left + 6, time.x(alarm.to())));
        double y = celsius.top() - ALARMS_ABOVE_EMS * pen.em();
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
