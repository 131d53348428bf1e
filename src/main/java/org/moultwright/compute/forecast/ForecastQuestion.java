package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.List;
import org.moultwright.domain.BroodRecord;

/**
 * One question to the {@link Forecaster}.
 *
 * @param record the brood with its readings
 * @param asOf the instant of the question; nothing after it is looked at
 * @param past completed broods of the same taxon to learn from
 * @param seed for the sampler: the same question with the same seed gives the same bits
 * @param compositionAt the instants at which the trays' contents are asked for
 */
public record ForecastQuestion(
        BroodRecord record, Instant asOf, PastBroods past, long seed, List<Instant> compositionAt) {
    public ForecastQuestion {
        compositionAt = List.copyOf(compositionAt);
    }
}
