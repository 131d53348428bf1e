package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.Milestone;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.domain.Account;
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
     * @param tray its code, or that of the sac's account for all animals of a sac nobody had opened
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
                .mapToObj(twentieth -> when.at(5 * twentieth))
                .toList();
    }

    /**
     * What of a forecast can be scored later: events that had not begun when it was made. Of a sac only the half: when
     * the first and the most of its animals get there depends on their number, which was supposed.
     */
    public static MadeForecast of(UUID id, BroodForecast forecast, int checks) {
        Stream<Event> ofTrays = forecast.trays().stream()
                .flatMap(tray -> events(tray.tray(), tray.moults(), List.of(Milestone.values()), forecast.asOf()));
        Stream<Event> ofSac = forecast.sac().stream()
                .flatMap(sac -> events(Account.SAC.code(), sac.moults(), List.of(Milestone.HALF), forecast.asOf()));
        List<Event> events = Stream.concat(ofTrays, ofSac).toList();
        return new MadeForecast(
                id,
                forecast.brood(),
                forecast.asOf(),
                forecast.priorFrom().name(),
                forecast.learnedBroods(),
                checks,
                events);
    }

    private static Stream<Event> events(
            String tray, List<MoultForecast> moults, List<Milestone> milestones, Instant asOf) {
        return moults.stream()
                .flatMap(moult -> milestones.stream()
                        .filter(milestone -> moult.at(milestone).p90().isAfter(asOf))
                        .map(milestone ->
                                new Event(tray, moult.into(), milestone.key(), twentieths(moult.at(milestone)))));
    }
}
