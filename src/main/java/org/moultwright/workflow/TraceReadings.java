package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.RollUp;
import org.moultwright.domain.RollUpLevel;
import org.moultwright.domain.RollUps;

/**
 * The readings of a probe over a stretch of time, as fine as can be seen and hardly finer: from the coarsest roll-ups
 * of which none is wider than {@link #WIDEST_PIXELS}, or each for itself where there are few or all roll-ups are wider.
 *
 * @param level how coarse they are; empty where each stands for itself
 * @param rollUps in order of time; the first may begin a little before the stretch
 */
public record TraceReadings(Optional<RollUpLevel> level, List<RollUp> rollUps) {
    /** A block of lowest to highest so wide is still seen as part of a line. */
    private static final int WIDEST_PIXELS = 3;

    /** So many are read about as quickly as roll-ups, and tell each instant. */
    private static final int FEW_READINGS = 20_000;

    public TraceReadings {
        rollUps = List.copyOf(rollUps);
    }

    /**
     * Reads them from the log.
     *
     * @param pixels how wide the stretch from {@code from} or, if that is later, the first reading would be shown
     */
    public static TraceReadings of(ReadingLog log, String probe, Instant from, Instant to, double pixels) {
        Instant end = to.plusMillis(1);
        Instant begin = log.earliest(probe).filter(from::isBefore).orElse(from);
        // Minutes are made from the readings when asked for: those are no slower to show.
        return RollUpLevel.coarsest(Duration.between(begin, to), pixels / WIDEST_PIXELS)
                .filter(found -> found != RollUpLevel.MINUTE)
                .map(level -> new TraceReadings(Optional.of(level), log.rollUps(probe, level, begin, end)))
                .filter(rolledUp -> rolledUp.count() > FEW_READINGS)
                .orElseGet(
                        () -> new TraceReadings(Optional.empty(), RollUps.each(log.temperatures(probe, begin, end))));
    }

    /** Whether roll-ups of a level are fine enough for a stretch shown so wide. */
    public static boolean isFineEnough(RollUpLevel level, Duration stretch, double pixels) {
        return level.millis() * pixels <= stretch.toMillis() * WIDEST_PIXELS;
    }

    private long count() {
        return rollUps.stream()
                .mapToLong(rollUp -> rollUp.good() + rollUp.bad())
                .sum();
    }
}
