package org.moultwright.ui.chart;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
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
    private final ObjectProperty<Optional<Lane.Absence>> absence = new SimpleObjectProperty<>(Optional.empty());

    /**
     * @param nowWord what now is called, such as "tonight, 3 May"; the line stands beneath it
     * @param leftEms where the charts beneath begin, in sizes of text from this strip's left
     */
    public CalendarStrip(ObservableObjectValue<Palette> palette, Supplier<String> nowWord, double leftEms) {
        super(palette);
        this.nowWord = nowWord;
        this.leftEms = leftEms;
        calendar.addListener((observed, before, now) -> repaint());
        absence.addListener((observed, before, now) -> repaint());
        getStyleClass().add("calendar-strip");
    }

    public ObjectProperty<Optional<Calendar>> calendarProperty() {
        return calendar;
    }

    /** Days nobody is there, whose word stands over them. */
    public ObjectProperty<Optional<Lane.Absence>> absenceProperty() {
        return absence;
    }

    @Override
    void paint(Pen pen, double width, double height) {
        calendar.get().ifPresent(shown -> paint(pen, shown.axis(leftEms * em(), width), shown.now(), height));
    }

    private void paint(Pen pen, CalendarAxis axis, Instant now, double height) {
        double y = height / 2 - 1;
        double nowX = axis.x(now);
        Place after = after(nowWord.get(), Type.CAPTION_STRONG, nowX, pen);
        Place nowPlace = after.right() < axis.right() ? after : after.before(nowX);
        List<Place> taken = new ArrayList<>(List.of(nowPlace));
        absence.get()
                .map(days -> after(days.words(), Type.CAPTION_STRONG, axis.x(days.from()), pen))
                .filter(place -> place.left() > axis.left() && place.isFree(taken, axis))
                .ifPresent(place -> {
                    taken.add(place);
                    pen.words(place.word(), Type.CAPTION_STRONG, Token.WARN, place.left(), y, TextAlignment.LEFT);
                });
        for (CalendarAxis.Tick tick : axis.ticks(Calendar.TICK_ROOM_EMS * pen.em())) {
            double x = axis.x(tick.at());
            Place place = after(tick.word(), Type.CAPTION, x, pen);
            Stream.of(place, place.before(x))
                    .filter(one -> one.isFree(taken, axis))
                    .findFirst()
                    .ifPresent(
                            one -> pen.words(one.word(), Type.CAPTION, Token.MUTED, one.left(), y, TextAlignment.LEFT));
            pen.vertical(pen.colour(Token.LINE), 1, x, height - 6, height);
        }
        pen.words(nowPlace.word(), Type.CAPTION_STRONG, Token.ACCENT, nowPlace.left(), y, TextAlignment.LEFT);
        pen.vertical(pen.colour(Token.ACCENT), 2, nowX, 4, height);
    }

    private static Place after(String word, Type type, double x, Pen pen) {
        return new Place(word, x + WORD_GAP_PIXELS, pen.width(word, type));
    }

    /** Where a word stands. */
    private record Place(String word, double left, double width) {
        double right() {
            return left + width;
        }

        /** The same left of a line. */
        Place before(double x) {
            return new Place(word, x - WORD_GAP_PIXELS - width, width);
        }

        boolean isFree(List<Place> taken, CalendarAxis axis) {
            return right() <= axis.right() && taken.stream().noneMatch(this::meets);
        }

        private boolean meets(Place other) {
            return left < other.right() + 2 * WORD_GAP_PIXELS && other.left < right() + 2 * WORD_GAP_PIXELS;
        }
    }
}
