package org.moultwright.compute.history;

import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.moultwright.compute.forecast.CountInterval;
import org.moultwright.domain.Stage;

/**
 * What all trays of a brood together are expected to hold on a day to come, had nothing been taken out but the
 * dead.
 *
 * @param at the instant
 * @param living the middle of each stage's forecast
 * @param alive all living animals with 80 % bounds
 */
public record OutlookDay(Instant at, Map<Stage, Double> living, CountInterval alive) {
    public OutlookDay {
        EnumMap<Stage, Double> ordered = new EnumMap<>(Stage.class);
        ordered.putAll(living);
        living = Collections.unmodifiableMap(ordered);
    }
}
