package org.moultwright.ui.chart;

import java.util.List;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.text.TextAlignment;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.ui.theme.Palette;
import org.moultwright.ui.theme.Token;

/** Ten bars, one for each tenth of what forecasts held possible, over the band in which even ones would end. */
public final class TenthsChart extends ShownCanvas<TenthsChart.Shown> {
    private static final double LOWEST_EMS = 9;
    private static final double FOOT_EMS = 2.6;
    private static final double GAP_PIXELS = 4;

    public TenthsChart(ObservableObjectValue<Palette> palette) {
        super(palette);
        shownProperty()
                .addListener((observed, before, now) ->
                        setAccessibleText(now.map(Shown::words).orElse("")));
    }

    @Override
    protected double computePrefHeight(double width) {
        return LOWEST_EMS * em();
    }

    @Override
    protected double computeMinHeight(double width) {
        return LOWEST_EMS * em();
    }

    @Override
    void paint(Pen pen, Shown bars, double width, double height) {
        double floor = height - FOOT_EMS * pen.em();
        double most = Math.max(
                bars.high(),
                bars.counts().stream().mapToInt(Integer::intValue).max().orElse(1));
        double perCount = (floor - pen.em()) / Math.max(1, most);
        double bandTop = floor - bars.high() * perCount;
        pen.fill(pen.colour(Token.ACCENT_SOFT), 0, bandTop, width, (bars.high() - bars.low()) * perCount);
        double step = width / bars.counts().size();
        for (int i = 0; i < bars.counts().size(); i++) {
            double tall = bars.counts().get(i) * perCount;
            pen.fill(pen.colour(Token.INSTAR2), i * step + GAP_PIXELS / 2, floor - tall, step - GAP_PIXELS, tall);
            if (bars.counts().get(i) > 0) {
                pen.words(
                        Integer.toString(bars.counts().get(i)),
                        Type.CAPTION,
                        Token.INK,
                        (i + 0.5) * step,
                        floor - tall - 0.6 * pen.em(),
                        TextAlignment.CENTER);
            }
        }
        pen.horizontal(pen.colour(Token.LINE), floor, 0, width);
        double foot = floor + pen.em();
        pen.words(Texts.say("earlier than told"), Type.CAPTION, Token.MUTED, 0, foot, TextAlignment.LEFT);
        pen.words(Texts.say("in the middle"), Type.CAPTION, Token.MUTED, width / 2, foot, TextAlignment.CENTER);
        pen.words(Texts.say("later than told"), Type.CAPTION, Token.MUTED, width, foot, TextAlignment.RIGHT);
    }

    /**
     * What is shown.
     *
     * @param counts truths in each tenth, the earliest first
     * @param low least count of an even tenth, nine times of ten
     * @param high its greatest
     */
    public record Shown(List<Integer> counts, double low, double high) {
        public Shown {
            counts = List.copyOf(counts);
        }

        String words() {
            return Texts.say(
                    "truths by tenth of the forecast's probability, earliest first: {0}; even forecasts end "
                            + "between {1} and {2}",
                    counts, Numbers.fixed(low, 1), Numbers.fixed(high, 1));
        }
    }
}
