package org.moultwright.ui.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.moultwright.compute.forecast.Composition;
import org.moultwright.compute.plan.Safety;
import org.moultwright.compute.plan.TrayPots;
import org.moultwright.text.DayWords;

/**
 * How many pots all trays together need by the evening of each day: one for every animal in the last stage.
 *
 * <p>Each tray has enough with the safety asked for, and trays are added up, so all together are safer still.
 */
final class PotNeeds {
    private PotNeeds() {}

    /** Only days on which more are needed than on any before. */
    static List<Need> of(List<Foreseen> trays, Safety safety, DayWords days) {
        Map<LocalDate, Integer> byDay = new TreeMap<>();
        for (Foreseen tray : trays) {
            TrayPots pots = new TrayPots(tray.lastStage(), tray.tray().alive(), safety);
            int most = 0;
            for (Composition composition : tray.forecast().compositions()) {
                most = Math.max(most, pots.at(composition));
                byDay.merge(days.date(composition.at()), most, Integer::sum);
            }
        }
        List<Need> needs = new ArrayList<>();
        int before = 0;
        for (Map.Entry<LocalDate, Integer> day : byDay.entrySet()) {
            int pots = day.getValue();
            if (pots > before) {
                needs.add(new Need(day.getKey(), pots, pots - before));
                before = pots;
            }
        }
        return needs;
    }

    /**
     * Pots to have by a day.
     *
     * @param pots in all
     * @param more than by any day before
     */
    record Need(LocalDate day, int pots, int more) {}
}
