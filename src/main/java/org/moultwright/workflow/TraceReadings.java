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
 * @param level how coarse they are; empty where each stands for itself
 * @param rollUps in order of time; the first may begin a little before the stretch
 */
public record TraceReadings(Optional<RollUpLevel> level, List<RollUp> rollUps) {
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
        // Minutes are made from the readings when asked for: those are no slower to show, and can be counted.
        Optional<RollUpLevel> level =
                RollUpLevel.coarsest(Duration.between(begin, to), pixels).filter(found -> found != RollUpLevel.MINUTE);
        return new TraceReadings(
                level,
                level.map(coarse -> log.rollUps(probe, coarse, begin, end))
                        .orElseGet(() -> RollUps.each(log.series(probe, begin, end))));
    }
}
