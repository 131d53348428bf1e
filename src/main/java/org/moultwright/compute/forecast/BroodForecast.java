package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.Stage;

/**
 * What is expected of one brood.
 *
 * @param brood its code
 * @param asOf the instant up to which anything was looked at
 * @param warmDays its age in warm-days, the mean over its trays
 * @param gapFraction share of its age, within [0, 1], whose temperature was not measured
 * @param priorFrom where the belief came from
 * @param learnedBroods how many completed broods were learned from
 * @param trays one for each tray
 * @param yieldInto the last stage
 * @param yield how many animals will ever enter the last stage; empty where there is too little to go on
 * @param notes what a reader must know
 */
public record BroodForecast(
        String brood,
        Instant asOf,
        double warmDays,
        double gapFraction,
        PriorSource priorFrom,
        int learnedBroods,
        List<TrayForecast> trays,
        Stage yieldInto,
        Optional<CountInterval> yield,
        List<ForecastNote> notes) {
    public BroodForecast {
        trays = List.copyOf(trays);
        notes = List.copyOf(notes);
    }

    public Optional<TrayForecast> tray(String code) {
        return trays.stream().filter(tray -> tray.tray().equals(code)).findFirst();
    }
}
