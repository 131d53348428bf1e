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
 * @param sac what is expected inside a sac nobody has opened; then there are no trays and no yield
 * @param expectedAges what was believed after what completed broods taught, before the brood showed anything
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
        Optional<SacForecast> sac,
        List<ExpectedAge> expectedAges,
        List<ForecastNote> notes) {
    public BroodForecast {
        trays = List.copyOf(trays);
        expectedAges = List.copyOf(expectedAges);
        notes = List.copyOf(notes);
    }

    /** A brood that was opened, or of which nothing is known. */
    public BroodForecast(
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
        this(
                brood,
                asOf,
                warmDays,
                gapFraction,
                priorFrom,
                learnedBroods,
                trays,
                yieldInto,
                yield,
                Optional.empty(),
                List.of(),
                notes);
    }

    public Optional<TrayForecast> tray(String code) {
        return trays.stream().filter(tray -> tray.tray().equals(code)).findFirst();
    }
}
