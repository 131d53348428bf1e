package org.moultwright.ui.chart;

import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.text.TextAlignment;
import org.moultwright.ui.theme.Palette;
import org.moultwright.ui.theme.Token;

/** The words of a calendar above a list of charts that share it, and the word for now. */
public final class CalendarStrip extends ChartCanvas {
    private static final double WORD_GAP_PIXELS = 5;

    private final ObjectProperty<Optional<Calendar>> calendar = new SimpleObjectProperty<>(Optional.empty());
    private final Supplier<String> nowWord;
    private final double leftEms;

    /**
     * @param nowWord what now is called, such as "tonight, 3 May"; the line stands beneath it
     * @param leftEms where the charts beneath begin, in sizes of text from this strip's left
     */
    public CalendarStrip(ObservableObjectValue<Palette> palette, Supplier<String> nowWord, double leftEms) {
        super(palette);
        this.nowWord = nowWord;
        this.leftEms = leftEms;
        calendar.addListener((observed, before, now) -> repaint());
        getStyleClass().add("calendar-strip");
    }

    public ObjectProperty<Optional<Calendar>> calendarProperty() {
        return calendar;
    }

    @Override
    void paint(Pen pen, double width, double height) {
        calendar.get().ifPresent(shown -> paint(pen, shown.axis(leftEms * em(), width), shown.now(), height));
    }

    private void paint(Pen pen, CalendarAxis axis, Instant now, double height) {
        String word = nowWord.get();
        double nowX = axis.x(now);
        double nowWidth = pen.width(word, Type.CAPTION_STRONG);
        boolean nowFits = nowX + WORD_GAP_PIXELS + nowWidth < axis.right();
        double nowLeft = nowFits ? nowX + WORD_GAP_PIXELS : nowX - WORD_GAP_PIXELS - nowWidth;
        double y = height / 2 - 1;
        for (CalendarAxis.Tick tick : axis.ticks(Calendar.TICK_ROOM_EMS * pen.em())) {
            double x = axis.x(tick.at());
            double wordWidth = pen.width(tick.word(), Type.CAPTION);
            double wordLeft = x + WORD_GAP_PIXELS;
            boolean meetsNow = overlaps(wordLeft, wordWidth, nowLeft, nowWidth);
            if (meetsNow) {
                wordLeft = x - WORD_GAP_PIXELS - wordWidth;
                meetsNow = overlaps(wordLeft, wordWidth, nowLeft, nowWidth);
            }
            if (!meetsNow && wordLeft + wordWidth <= axis.right()) {
                pen.words(tick.word(), Type.CAPTION, Token.MUTED, wordLeft, y, TextAlignment.LEFT);
            }
            pen.vertical(pen.colour(Token.LINE), 1, x, height - 6, height);
        }
        pen.words(word, Type.CAPTION_STRONG, Token.ACCENT, nowLeft, y, TextAlignment.LEFT);
        pen.vertical(pen.colour(Token.ACCENT), 2, nowX, 4, height);
    }

    private static boolean overlaps(double left, double width, double otherLeft, double otherWidth) {
        return left < otherLeft + otherWidth + 2 * WORD_GAP_PIXELS && otherLeft < left + width + 2 * WORD_GAP_PIXELS;
    }
}
