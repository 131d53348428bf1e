package org.moultwright.ui.chart;

import java.util.List;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.paint.Paint;
import javafx.scene.text.TextAlignment;
import org.moultwright.ui.theme.Palette;
import org.moultwright.ui.theme.Token;

/**
 * Every animal's way: the first bar is all of them, each further one hangs where the one above left off, and the last
 * ends at nothing, so that none is unaccounted for. Its word stands at the left, its number at the right.
 */
public final class LedgerBars extends ChartCanvas {
    private static final double ROW_EMS = 1.667;
    private static final double WORD_EMS = 5.9;
    private static final double NUMBER_EMS = 2.7;
    private static final double BAR_EMS = 1.067;
    private static final double SHORTEST_BAR_PIXELS = 4;
    private static final double WORD_GAP_PIXELS = 10;
    private static final double NUMBER_GAP_PIXELS = 8;

    private final ObservableList<Bar> bars = FXCollections.observableArrayList();

    public LedgerBars(ObservableObjectValue<Palette> palette) {
        super(palette);
        getStyleClass().add("ledger-bars");
        // An account without its row would be an animal nobody sees.
        setMinHeight(USE_COMPUTED_SIZE);
        bars.addListener((ListChangeListener<Bar>) change -> {
            setAccessibleText(words(bars));
            repaint();
        });
    }

    public ObservableList<Bar> bars() {
        return bars;
    }

    @Override
    protected double computePrefHeight(double width) {
        return bars.size() * ROW_EMS * em();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    void paint(Pen pen, double width, double height) {
        int most = bars.stream().mapToInt(Bar::count).max().orElse(0);
        double left = bars.stream()
                .mapToDouble(bar -> pen.width(bar.word(), Type.BODY) + WORD_GAP_PIXELS)
                .reduce(WORD_EMS * pen.em(), Math::max);
        double right = bars.stream()
                .mapToDouble(bar -> pen.width(bar.number(), Type.STRONG) + 2 * NUMBER_GAP_PIXELS)
                .reduce(NUMBER_EMS * pen.em(), Math::max);
        double room = Math.max(1, width - left - right);
        double y = ROW_EMS * pen.em() / 2;
        double barHeight = BAR_EMS * pen.em();
        double scale = room / Math.max(1, most);
        int above = most;
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            int below = i == 0 ? 0 : Math.max(0, above - bar.count());
            double length = Math.max(SHORTEST_BAR_PIXELS, bar.count() * scale);
            double from = Math.max(left, left + above * scale - length);
            pen.words(bar.word(), Type.BODY, Token.MUTED, 0, y, TextAlignment.LEFT);
            pen.bar(paint(pen, bar.token()), from, y - barHeight / 2, length, barHeight, 2);
            if (i > 0 && i + 1 < bars.size()) {
                double x = left + below * scale;
                pen.vertical(pen.colour(Token.LINE), 1, x, y - barHeight / 2, y + ROW_EMS * pen.em());
            }
            double wordLeft = left + above * scale + NUMBER_GAP_PIXELS;
            pen.words(bar.number(), Type.STRONG, Token.INK, wordLeft, y, TextAlignment.LEFT);
            above = i == 0 ? above : below;
            y += ROW_EMS * pen.em();
        }
    }

    private static Paint paint(Pen pen, Token token) {
        return token == Token.DEAD ? pen.palette().hatch(Token.DEAD) : pen.colour(token);
    }

    private static String words(List<? extends Bar> bars) {
        return String.join(
                ", ", bars.stream().map(bar -> bar.word() + " " + bar.number()).toList());
    }

    /**
     * One account.
     *
     * @param count animals, at least 0
     * @param isLoss whether they are taken from the whole, which the number shows with a minus
     */
    public record Bar(String word, int count, boolean isLoss, Token token) {
        String number() {
            return isLoss ? "−" + count : Integer.toString(count);
        }
    }
}
