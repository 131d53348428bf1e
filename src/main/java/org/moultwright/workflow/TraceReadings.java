package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.RollUp;
import org.moultwright.domain.RollUpLevel;
import org.moultwright.domain.RollUps;

/**
 * The readings of a probe over a stretch of time, as fine as can be seen and no finer: from the coarsest roll-ups
 * that give at least one a pixel, or each for itself where none does.
 *
 * @param from the first instant
 * @param rollUps in order of time; the first may begin a little earlier
 */
public record TraceReadings(Instant from, Instant to, List<RollUp> rollUps) {
    /** How far back is looked where nothing was ever measured. */
    private static final Duration SHORTEST = Duration.ofDays(1);

    public TraceReadings {
        rollUps = List.copyOf(rollUps);
    }

    /**
     * Reads them from the log.
     *
     * @param length how far back from {@code to}; empty for all there is
     * @param pixels how wide they are to be shown
     */
    public static TraceReadings of(ReadingLog log, String probe, Optional<Duration> length, Instant to, double pixels) {
        Instant from = length.map(to::minus)
                .or(() -> log.earliest(probe).filter(first -> first.isBefore(to)))
                .orElse(to.minus(SHORTEST));
        Instant end = to.plusMillis(1);
        List<RollUp> rollUps = RollUpLevel.coarsest(Duration.between(from, to), pixels)
                .map(level -> log.rollUps(probe, level, from, end))
                .orElseGet(() -> RollUps.each(log.series(probe, from, end)));
        return new TraceReadings(from, to, rollUps);
    }
}
