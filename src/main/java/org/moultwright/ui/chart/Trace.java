package org.moultwright.ui.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.ReadingSeries;

/**
 * What a trace shows: the temperature of one place over a stretch of time, and of others beside it.
 *
 * @param zone where days begin and end
 * @param window the stretch shown
 * @param line the corrected readings, those outside the stretch included or not
 * @param others further probes laid over it, at most {@link #MOST_OTHERS}
 * @param target the band aimed at
 * @param longestBridged a longer time without a good reading is a gap
 * @param alarms spans in which something was wrong
 * @param residents who lived there
 * @param remembered the lowest and highest of thermometers there that remember both
 */
public record Trace(
        ZoneId zone,
        TraceWindow window,
        Line line,
        List<Line> others,
        Optional<Band> target,
        Duration longestBridged,
        List<Stretch> alarms,
        List<Stretch> residents,
        List<Remembered> remembered) {
    /** More lines could not be told apart. */
    public static final int MOST_OTHERS = 3;

    public Trace {
        others = List.copyOf(others);
        alarms = List.copyOf(alarms);
        residents = List.copyOf(residents);
        remembered = List.copyOf(remembered);
    }

    public Instant from() {
        return window.from();
    }

    public Instant to() {
        return window.to();
    }

    public ReadingSeries readings() {
        return line.readings().readings();
    }

    /**
     * One probe's readings.
     *
     * @param isRolledUp whether these are roll-ups, so that a count may be off at the ends by those of one
     */
    public record Line(String name, ReadingPyramid readings, boolean isRolledUp) {}

    /** Temperatures aimed at, in °C. */
    public record Band(double lowCelsius, double highCelsius) {}

    /** A lowest and a highest, in °C, of which nobody knows when in a stretch of time they were. */
    public record Remembered(Instant from, Instant to, double lowCelsius, double highCelsius) {
        public boolean holds(Instant at) {
            return !at.isBefore(from) && at.isBefore(to);
        }
    }

    /** A stretch of time with words upon it. */
    public record Stretch(Instant from, Instant to, String words) {}
}
