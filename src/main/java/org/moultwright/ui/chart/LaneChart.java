package org.moultwright.ui.chart;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.moultwright.ui.theme.Palette;
import org.moultwright.ui.theme.Token;

/**
 * The windows of one tray over the calendar, in three rows: the first, half and 95 % of those that enter a
 * stage. A bar is an 80 % window in the colour of the stage entered, a mark its middle, a square what has been. What has
 * been before the calendar begins, or on a day nobody wrote down, is told in words where its row would be empty.
 */
public final class LaneChart extends ShownCanvas<LaneChart.Shown> {
    /** Where the calendar begins, in sizes of text from the left; the words of the rows stand before it. */
    public static final double CALENDAR_LEFT_EMS = 3.733;

    private static final List<Lane.Row> ROWS = List.of(Lane.Row.values());
    private static final double WORD_GAP_EMS = 0.8;
    private static final double WINDOW_OPACITY = 0.45;
    private static final double BAR_PIXELS = 10;
    private static final double MARK_WIDTH_PIXELS = 6;
    private static final double MARK_HEIGHT_PIXELS = 18;
    private static final double SQUARE_PIXELS = 12;

    public LaneChart(ObservableObjectValue<Palette> palette) {
        super(palette);
    }

    @Override
    void paint(Pen pen, Shown showing, double width, double height) {
        CalendarAxis axis = showing.calendar().axis(CALENDAR_LEFT_EMS * em(), width);
        showing.absence().ifPresent(absence -> {
            double left = Math.max(axis.left(), axis.x(absence.from()));
            pen.fill(pen.colour(Token.WARN_SOFT), left, 0, Math.min(width, axis.x(absence.to())) - left, height);
        });
        showing.calendar().paint(pen, axis, height);
        double rowHeight = height / ROWS.size();
        for (Lane.Row row : ROWS) {
            double middle = rowMiddle(row, rowHeight);
            double wordsRight = (CALENDAR_LEFT_EMS - WORD_GAP_EMS) * em();
            pen.words(row.word(), Type.CAPTION, Token.MUTED, wordsRight, middle, TextAlignment.RIGHT);
        }
        pen.vertical(pen.colour(Token.ACCENT), 2, axis.x(showing.calendar().now()), 0, height);
        showing.asItIs().stream()
                .flatMap(lane -> lane.windows().stream())
                .filter(window -> !window.isPast())
                .forEach(window -> outline(pen, axis, window, rowMiddle(window.row(), rowHeight)));
        for (Lane.Window window : showing.lane().windows()) {
            window(pen, axis, window, rowMiddle(window.row(), rowHeight));
        }
        for (Lane.Row row : ROWS) {
            showing.lane()
                    .words(row, showing.calendar().from())
                    .ifPresent(words -> pen.words(
                            words,
                            Type.CAPTION,
                            Token.MUTED,
                            axis.x(showing.calendar().now()) + WORD_GAP_EMS * em(),
                            rowMiddle(row, rowHeight),
                            TextAlignment.LEFT));
        }
    }

    private static double rowMiddle(Lane.Row row, double rowHeight) {
        return (ROWS.indexOf(row) + 0.5) * rowHeight;
    }

    /** Where a window stands as things are, behind the one tried. */
    private static void outline(Pen pen, CalendarAxis axis, Lane.Window window, double middle) {
        double left = Math.max(axis.left(), axis.x(window.from()));
        double right = Math.max(left + MARK_WIDTH_PIXELS, axis.x(window.to()));
        pen.frame(pen.colour(Token.MUTED), 1, left, middle - BAR_PIXELS / 2, right - left, BAR_PIXELS, 2);
    }

    private static void window(Pen pen, CalendarAxis axis, Lane.Window window, double middle) {
        Color colour = pen.palette().stage(window.into());
        double x = axis.x(window.middle());
        if (x < axis.left()) {
            return;
        }
        if (window.isPast()) {
            pen.bar(colour, x - SQUARE_PIXELS / 2, middle - SQUARE_PIXELS / 2, SQUARE_PIXELS, SQUARE_PIXELS, 2);
            return;
        }
        double left = Math.max(axis.left(), axis.x(window.from()));
        double right = Math.max(left + MARK_WIDTH_PIXELS, axis.x(window.to()));
        pen.alpha(WINDOW_OPACITY);
        pen.bar(colour, left, middle - BAR_PIXELS / 2, right - left, BAR_PIXELS, 2);
        pen.alpha(1);
        pen.bar(
                colour,
                x - MARK_WIDTH_PIXELS / 2,
                middle - MARK_HEIGHT_PIXELS / 2,
                MARK_WIDTH_PIXELS,
                MARK_HEIGHT_PIXELS,
                1);
    }

    /**
     * A lane on the calendar of its list.
     *
     * @param absence the one planned, if any
     * @param asItIs the same lane as things are, outlined behind a what-if
     */
    public record Shown(Lane lane, Calendar calendar, Optional<Lane.Absence> absence, Optional<Lane> asItIs) {}
}
