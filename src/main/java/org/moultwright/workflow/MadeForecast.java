package org.moultwright.workflow;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.Milestone;
import org.moultwright.domain.Stage;

/**
 * A forecast as it was made, with what it knew.
 *
 * @param id names it for ever
 * @param brood whose it was
 * @param asOf the instant up to which anything was known
 * @param priorFrom where its belief came from
 * @param learnedBroods how many completed broods had taught it
 * @param checks how many looks at the brood it had
 * @param events what it said of each
 */
public record MadeForecast(
        UUID id, String brood, Instant asOf, String priorFrom, int learnedBroods, int checks, List<Event> events) {

    /**
     * One tray's milestone on the way into a stage.
     *
     * @param milestone its key
     * @param twentieths every fifth percentile of its date, from 0 to 100 %
     */
    public record Event(String tray, Stage into, String milestone, List<Instant> twentieths) {
        public Event {
            twentieths = List.copyOf(twentieths);
        }
    }

    public MadeForecast {
        events = List.copyOf(events);
    }

    private static List<Instant> twentieths(InstantInterval when) {
        return IntStream.rangeClosed(0, 20)
                .mapToObj(twentieth -> when.percentiles().get(5 * twentieth))
                .toList();
    }

    /** What of a forecast can be scored later: events that had not begun when it was made. */
    public static MadeForecast of(UUID id, BroodForecast forecast, int checks) {
        List<Event> events = forecast.trays().stream()
                .flatMap(tray -> tray.moults().stream()
                        .flatMap(moult -> Arrays.stream(Milestone.values())
                                .filter(milestone -> moult.at(milestone).p90().isAfter(forecast.asOf()))
                                .map(milestone -> new Event(
                                        tray.tray(), moult.into(), milestone.key(), twentieths(moult.at(milestone))))))
                .toList();
        return new MadeForecast(
                id,
                forecast.brood(),
                forecast.asOf(),
                forecast.priorFrom().name(),
                forecast.learnedBroods(),
                checks,
                events);
    }
}
