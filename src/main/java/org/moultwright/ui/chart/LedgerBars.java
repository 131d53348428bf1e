package org.moultwright.ui.chart;

import java.util.List;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.text.TextAlignment;
import org.moultwright.ui.theme.Palette;
import org.moultwright.ui.theme.Token;

/** One bar for each account of a ledger: its word at the left, its number at the right of the bar. */
public final class LedgerBars extends ChartCanvas {
    private static final double ROW_EMS = 1.667;
    private static final double WORD_EMS = 5.9;
    private static final double NUMBER_EMS = 2.7;
    private static final double BAR_EMS = 1.067;
    private static final double SHORTEST_BAR_PIXELS = 4;

    private final ObservableList<Bar> bars = FXCollections.observableArrayList();

    public LedgerBars(ObservableObjectValue<Palette> palette) {
        super(palette);
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
        double left = WORD_EMS * pen.em();
        double room = Math.max(1, width - left - NUMBER_EMS * pen.em());
        double y = ROW_EMS * pen.em() / 2;
        for (Bar bar : bars) {
            double length = Math.max(SHORTEST_BAR_PIXELS, room * bar.count() / Math.max(1, most));
            double barHeight = BAR_EMS * pen.em();
            pen.words(bar.word(), Type.BODY, Token.MUTED, 0, y, TextAlignment.LEFT);
            pen.bar(pen.colour(bar.token()), left, y - barHeight / 2, length, barHeight, 2);
            pen.words(bar.number(), Type.STRONG, Token.INK, left + length + 10, y, TextAlignment.LEFT);
            y += ROW_EMS * pen.em();
        }
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
