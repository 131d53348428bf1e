package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How likely it is that any of several trays is in need of hands on some days. Within a brood the trays are early or
 * late together, as the draws have it; broods are taken to tell nothing of each other.
 *
 * @param probability within [0, 1]
 * @param monteCarloSd standard error of it that comes from the number of draws alone
 */
public record JointChance(double probability, double monteCarloSd) {

    /**
     * That any of some events happens in any living tray after one instant and by another; empty where too little is
     * known of every tray.
     */
    public static Optional<JointChance> ofAny(
            List<BroodForecast> broods, Set<HandsEvent> events, Instant from, Instant to) {
        boolean isKnown = false;
        double none = 1;
        double relativeVariance = 0;
        for (BroodForecast brood : broods) {
            List<PossibleDates> trays = brood.trays().stream()
                    .filter(tray -> tray.expectedAlive() > 0)
                    .map(TrayForecast::possible)
                    .filter(dates -> dates.draws() > 0)
                    .toList();
            if (!trays.isEmpty()) {
                isKnown = true;
                double draws = trays.get(0).effectiveDraws();
                double chance = share(brood, trays, events, (double) from.toEpochMilli(), (double) to.toEpochMilli());
                none *= 1 - chance;
                // With every draw or none of them the share still has an error: the rule of one more of each.
                double likely = (chance * draws + 1) / (draws + 2);
                relativeVariance += likely / ((1 - likely) * draws);
            }
        }
        return isKnown ? Optional.of(new JointChance(1 - none, none * Math.sqrt(relativeVariance))) : Optional.empty();
    }

    private static double share(
            BroodForecast brood, List<PossibleDates> trays, Set<HandsEvent> events, double from, double to) {
        int draws = trays.get(0).draws();
        int happening = 0;
        for (int draw = 0; draw < draws; draw++) {
            int number = draw;
            boolean happens = trays.stream()
                    .anyMatch(tray -> events.stream()
                            .anyMatch(event -> event.isBetween(tray, brood.yieldInto(), number, from, to)));
            happening += happens ? 1 : 0;
        }
        return (double) happening / draws;
    }
}
