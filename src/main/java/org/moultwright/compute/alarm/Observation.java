package org.moultwright.compute.alarm;

import java.time.Instant;
import java.util.Optional;
import org.moultwright.compute.psychro.CondensationRisk;
import org.moultwright.domain.Require;

/**
 * One moment in the watch over a container: a good reading, or only time going by.
 *
 * @param at the wall clock
 * @param elapsedMillis since the last observation by the steady clock; 0 at the first
 * @param sample the good reading, if one came
 */
public record Observation(Instant at, long elapsedMillis, Optional<Sample> sample) {
    public Observation {
        Require.that(elapsedMillis >= 0, "elapsedMillis is " + elapsedMillis + " but must not be negative");
    }

    /** Nothing but time. */
    public static Observation ofTime(Instant at, long elapsedMillis) {
        return new Observation(at, elapsedMillis, Optional.empty());
    }

    /**
     * A good reading with what belongs to it.
     *
     * @param indicatedCelsius as the probe said it
     * @param celsius the air's temperature, corrected
     * @param indicatedHumidityPercent as the probe said it, NaN where not measured
     * @param setPointCelsius what the container is set to, NaN where nobody knows
     * @param wall whether water settles on the coldest wall, empty where nothing tells it
     */
    public record Sample(
            double indicatedCelsius,
            double celsius,
            double indicatedHumidityPercent,
            double setPointCelsius,
            Optional<CondensationRisk> wall) {}
}
