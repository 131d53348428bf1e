package org.moultwright.ui.chart;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.text.TextAlignment;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Scale;
import org.moultwright.language.Texts;
import org.moultwright.ui.theme.Palette;
import org.moultwright.ui.theme.Token;

/**
 * The air a brood lived in, under its ribbon on the same calendar: each day's lowest to highest temperature with its
 * mean, mould where it was found, and how far each week's air favoured it. A day nothing measured is left blank.
 */
public final class ClimateStrip extends ShownCanvas<ClimateStrip.Shown> {
    private static final double ENVELOPE_OPACITY = 0.28;
    private static final double LEAST_SPAN_CELSIUS = 4;
    private static final double HIGHEST_INDEX = 6;
    private static final double LEAST_INDEX = 0.05;
    private static final double MARK_PIXELS = 5;

    public ClimateStrip(ObservableObjectValue<Palette> palette) {
        super(palette);
    }

    @Override
    void paint(Pen pen, Shown climate, double width, double height) {
        CalendarAxis axis = climate.calendar().axis(0, width);
        climate.calendar().paint(pen, axis, height);
        double mouldRoom = 2.4 * pen.em();
        double bottom = height - mouldRoom;
        if (climate.days().isEmpty()) {
            pen.words(
                    Texts.say("nothing measured where it lived"),
                    Type.CAPTION,
                    Token.MUTED,
                    4,
                    bottom / 2,
                    TextAlignment.LEFT);
        } else {
            temperature(pen, climate, axis, 0.7 * pen.em(), bottom - 0.4 * pen.em());
        }
        mould(pen, climate, axis, bottom, height - 2);
        pen.vertical(pen.colour(Token.ACCENT), 2, axis.x(climate.calendar().now()), 0, height);
        climate.reading().ifPresent(day -> pen.vertical(pen.colour(Token.INK), 1, axis.x(day), 0, height));
    }

    private static void temperature(Pen pen, Shown climate, CalendarAxis axis, double top, double bottom) {
        double low = climate.days().stream().mapToDouble(Day::low).min().orElse(0);
        double high = climate.days().stream().mapToDouble(Day::high).max().orElse(1);
        double spare = Math.max(0, LEAST_SPAN_CELSIUS - (high - low)) / 2;
        ValueAxis celsius = new ValueAxis(low - spare, high + spare, top, bottom);
        for (double tick : celsius.ticks(1.5 * pen.em())) {
            pen.horizontal(pen.colour(Token.LINE), celsius.y(tick), axis.left(), axis.right());
        }
        double previousX = Double.NaN;
        double previousY = 0;
        Instant previousEnd = Instant.MIN;
        for (Day day : climate.days()) {
            double left = axis.x(day.from());
            double right = axis.x(day.to());
            pen.alpha(ENVELOPE_OPACITY);
            pen.fill(
                    pen.colour(Token.ACCENT),
                    left,
                    celsius.y(day.high()),
                    right - left,
                    Math.max(1, celsius.y(day.low()) - celsius.y(day.high())));
            pen.alpha(1);
            double x = (left + right) / 2;
            double y = celsius.y(day.mean());
            boolean follows = day.from().equals(previousEnd);
            double fromX = follows ? previousX : left;
            double fromY = follows ? previousY : y;
            pen.polyline(pen.colour(Token.ACCENT), 1.8, new double[] {fromX, x}, new double[] {fromY, y}, 2);
            previousX = x;
            previousY = y;
            previousEnd = day.to();
        }
        // Words last, so that nothing runs over them.
        ValueAxis shown = celsius.in(Scale.TEMPERATURE);
        for (double tick : shown.ticks(1.5 * pen.em())) {
            String words = Numbers.fixed(tick, 0) + " " + Degrees.symbol();
            pen.words(words, Type.CAPTION, Token.MUTED, 4, shown.y(tick) - 0.55 * pen.em(), TextAlignment.LEFT);
        }
    }

    /** Weeks as bars of an index, mould found as a mark upon them. */
    private static void mould(Pen pen, Shown climate, CalendarAxis axis, double top, double bottom) {
        pen.horizontal(pen.colour(Token.LINE), bottom, axis.left(), axis.right());
        for (Week week : climate.weeks()) {
            double barHeight = (bottom - top) * week.index() / HIGHEST_INDEX;
            double left = axis.x(week.from());
            pen.fill(pen.colour(Token.WARN), left + 1, bottom - barHeight, axis.x(week.to()) - left - 2, barHeight);
        }
        pen.words(mouldWords(climate), Type.CAPTION, Token.MUTED, 4, bottom - 0.8 * pen.em(), TextAlignment.LEFT);
        for (Instant found : climate.mould()) {
            double x = axis.x(found);
            double reach = pen.pixels(MARK_PIXELS);
            double y = bottom - reach - 1;
            double[] xs = {x - reach, x, x + reach, x};
            double[] ys = {y, y - reach, y, y + reach};
            pen.polygon(pen.colour(Token.BAD), xs, ys);
        }
    }

    private static String mouldWords(Shown climate) {
        if (climate.weeks().isEmpty()) {
            return Texts.say("mould: no humidity measured");
        }
        boolean isFavoured = climate.weeks().stream().anyMatch(week -> week.index() > LEAST_INDEX);
        return isFavoured ? Texts.say("mould") : Texts.say("mould: no week favoured it");
    }

    /**
     * What is shown.
     *
     * @param mould when mould was found
     * @param reading the day being read
     */
    public record Shown(
            Calendar calendar, List<Day> days, List<Week> weeks, List<Instant> mould, Optional<Instant> reading) {
        public Shown {
            days = List.copyOf(days);
            weeks = List.copyOf(weeks);
            mould = List.copyOf(mould);
        }
    }

    /** One day's temperatures in °C. */
    public record Day(Instant from, Instant to, double low, double mean, double high) {}

    /** How far a week's air favoured mould, from 0 to 6. */
    public record Week(Instant from, Instant to, double index) {}
}
