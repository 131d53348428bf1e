package org.moultwright.ui.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.RollUp;

/**
 * What a trace shows: the temperature of one place over a stretch of time.
 *
 * @param zone where days begin and end
 * @param from the first instant shown
 * @param to the last instant shown, after {@code from}
 * @param rollUps corrected readings, each for itself or rolled up finer than can be seen, in order of time
 * @param target the band aimed at
 * @param longestBridged a longer time without a good reading is a gap
 * @param alarms spans in which something was wrong
 * @param residents who lived there
 */
public record Trace(
        ZoneId zone,
        Instant from,
        Instant to,
        List<RollUp> rollUps,
        Optional<Band> target,
        Duration longestBridged,
        List<Stretch> alarms,
        List<Stretch> residents) {
    public Trace {
        rollUps = List.copyOf(rollUps);
        alarms = List.copyOf(alarms);
        residents = List.copyOf(residents);
    }

    /** Temperatures aimed at, in °C. */
    public record Band(double lowCelsius, double highCelsius) {}

    /** A stretch of time with words upon it. */
    public record Stretch(Instant from, Instant to, String words) {}
}
