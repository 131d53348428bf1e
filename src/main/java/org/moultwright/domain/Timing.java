package org.moultwright.domain;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What is believed of a brood's timing before it has shown any.
 *
 * @param medianWarmDays median age from laying, in warm-days, at which an animal enters a stage
 * @param batchSd standard deviation of the log of the brood's own factor on those ages
 * @param rate how development depends on temperature
 */
public record Timing(Map<Stage, Double> medianWarmDays, double batchSd, RateForm rate) {
    public Timing {
        EnumMap<Stage, Double> ordered = new EnumMap<>(Stage.class);
        ordered.putAll(medianWarmDays);
        double previous = 0;
        for (Map.Entry<Stage, Double> entry : ordered.entrySet()) {
            Require.that(
                    entry.getValue() > previous,
                    "medianWarmDays must be above 0 and rise from stage to stage, but "
                            + entry.getKey().key() + " is " + entry.getValue());
            previous = entry.getValue();
        }
        medianWarmDays = Collections.unmodifiableMap(ordered);
        Require.within("batchSd", batchSd, 0, 2);
    }
}
