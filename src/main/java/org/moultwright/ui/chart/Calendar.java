package org.moultwright.ui.chart;

import java.time.Instant;
import java.time.ZoneId;
import org.moultwright.ui.theme.Token;

/**
 * The stretch of calendar that all charts of one list share.
 *
 * @param zone where days begin and end
 * @param from its first instant
 * @param to its last instant, after {@code from}
 * @param now the instant that divides what was from what is expected
 */
public record Calendar(ZoneId zone, Instant from, Instant to, Instant now) {
    /** The room a word of the calendar wants, in sizes of running text. */
    static final double TICK_ROOM_EMS = 6;

    CalendarAxis axis(double left, double right) {
        return new CalendarAxis(zone, from, to, left, Math.max(left + 1, right));
    }

    /** Paints the hairlines of the calendar over the whole height. */
    void paint(Pen pen, CalendarAxis axis, double height) {
        axis.ticks(TICK_ROOM_EMS * pen.em())
                .forEach(tick -> pen.vertical(pen.colour(Token.LINE), 1, axis.x(tick.at()), 0, height));
    }
}
