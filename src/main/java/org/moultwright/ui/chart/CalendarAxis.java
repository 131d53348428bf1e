package org.moultwright.ui.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.moultwright.domain.Require;

/**
 * The calendar laid along a line of pixels, in one keeper's zone.
 *
 * @param zone where days begin and end
 * @param from the instant at {@code left}
 * @param to the instant at {@code right}, after {@code from}
 * @param left in pixels
 * @param right in pixels
 */
public record CalendarAxis(ZoneId zone, Instant from, Instant to, double left, double right) {
    public CalendarAxis {
        Require.that(to.isAfter(from), "to " + to + " is not after from " + from);
    }

    /** Where an instant lies, in pixels; outside [left, right] for one outside the axis. */
    public double x(Instant instant) {
        return left + (right - left) * millis(from, instant) / millis(from, to);
    }

    /** The instant at a pixel. */
    public Instant at(double x) {
        double share = (x - left) / (right - left);
        return from.plusMillis(Math.round(share * millis(from, to)));
    }

    /** The starts of the finest step whose words have at least so much room. */
    public List<Tick> ticks(double roomPixels) {
        CalendarStep step = step(roomPixels);
        List<Tick> ticks = new ArrayList<>();
        LocalDateTime start = step.floor(LocalDateTime.ofInstant(from, zone));
        for (; !start.atZone(zone).toInstant().isAfter(to); start = step.next(start)) {
            Instant at = start.atZone(zone).toInstant();
            if (!at.isBefore(from)) {
                ticks.add(new Tick(at, step.word(start, ticks.isEmpty())));
            }
        }
        return ticks;
    }

    private CalendarStep step(double roomPixels) {
        double pixelsPerMilli = (right - left) / millis(from, to);
        return Arrays.stream(CalendarStep.values())
                .filter(step -> step.length().toMillis() * pixelsPerMilli >= roomPixels)
                .findFirst()
                .orElse(CalendarStep.YEAR);
    }

    private static double millis(Instant start, Instant end) {
        return Duration.between(start, end).toMillis();
    }

    /** The start of a step and its word, such as "March" or "4 May". */
    public record Tick(Instant at, String word) {}
}
