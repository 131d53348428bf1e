package org.moultwright.workflow;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.plan.Earliest;
import org.moultwright.compute.plan.OrderDates;
import org.moultwright.compute.plan.Parting;
import org.moultwright.compute.plan.TrayPots;
import org.moultwright.domain.Stage;

/**
 * What to order for the trays of one brood.
 *
 * @param brood its code
 * @param into the stage that is potted
 * @param count pots, as many labels, and animals to feed
 * @param hasBegun whether the first have entered that stage
 * @param pots when to order pots and labels: wanted for the first of them
 * @param food when to order food: wanted for the first meal
 */
public record BroodOrder(String brood, Stage into, int count, boolean hasBegun, OrderDates pots, OrderDates food) {

    /** Empty where nothing can be said of any tray, or nobody will want a pot. */
    public static Optional<BroodOrder> of(BroodView brood, BroodForecast forecast, OrderTerms terms) {
        Stage into = brood.record().brood().lastStage();
        List<InstantInterval> firsts = new ArrayList<>();
        int count = 0;
        boolean hasBegun = false;
        for (TrayView tray : brood.trays()) {
            var expected = forecast.tray(tray.tray()).filter(found -> tray.alive() > 0);
            var moult = expected.flatMap(found -> found.moult(into));
            if (expected.isPresent() && moult.isPresent()) {
                firsts.add(Parting.first(moult.get(), FirstSeen.in(brood.record(), tray.tray(), into)));
                count += new TrayPots(into, tray.alive(), terms.safety()).inAll(expected.get());
                hasBegun |= moult.get().hasBegun();
            }
        }
        if (count == 0) {
            return Optional.empty();
        }
        Earliest first = new Earliest(firsts);
        return Optional.of(new BroodOrder(
                brood.code(),
                into,
                count,
                hasBegun,
                dates(first, Duration.ZERO, terms.potDays(), terms),
                dates(first, Parting.FIRST_MEAL, terms.foodDays(), terms)));
    }

    private static OrderDates dates(Earliest first, Duration wantedAfter, int deliveryDays, OrderTerms terms) {
        return OrderDates.of(first, wantedAfter, terms.safety().chance(), deliveryDays, terms.zone(), terms.today());
    }
}
