package org.moultwright.workflow;

import java.util.List;
import java.util.Optional;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.domain.BroodRecord;

/**
 * One brood as it stands now.
 *
 * @param record all that is written of it up to now, readings included
 * @param trays its trays that hold or held animals, in shelf order
 * @param forecast what is expected of it, if it has been opened
 */
public record BroodView(BroodRecord record, List<TrayView> trays, Optional<BroodForecast> forecast) {
    public BroodView {
        trays = List.copyOf(trays);
    }

    public String code() {
        return record.brood().code();
    }
}
