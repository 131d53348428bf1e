package org.moultwright.compute.forecast;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Stage;

/**
 * Deaths, and the animal-warm-days they were lost from, by part of life: the egg in quarters of its expected
 * length, then each later stage. Infertile eggs taken out are no deaths: that some never pass is the passing
 * model's. Of many found dead in a tray at once, as after mould, most are left aside: they tell little of the days to
 * come.
 *
 * @param deaths by part of life
 * @param animalWarmDays lived in it
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record LifeTable(double[] deaths, double[] animalWarmDays) {
    /** More dead in a tray at one look than both of these are no part of every day's danger (assumptions). */
    private static final double MOST_AT_ONCE = 4;

    private static final double MOST_SHARE_AT_ONCE = 0.08;

    static final int EGG_PARTS = 4;
    private static final List<Stage> LATER =
            Arrays.stream(Stage.values()).filter(stage -> stage != Stage.EGG).toList();
    static final int PARTS = EGG_PARTS + LATER.size();

    /**
     * The table of a brood.
     *
     * @param eggWarmDays expected length of the egg stage
     */
    static LifeTable of(List<TrayHistory> trays, double eggWarmDays) {
        LifeTable table = new LifeTable(new double[PARTS], new double[PARTS]);
        for (TrayHistory tray : trays) {
            Map<Double, Integer> atOnce = new HashMap<>();
            tray.losses().forEach(loss -> atOnce.merge(loss.age(), loss.animals(), Integer::sum));
            double most = Math.max(MOST_AT_ONCE, MOST_SHARE_AT_ONCE * tray.animals());
            for (TrayHistory.Loss loss : tray.losses()) {
                double everyday = Math.min(1, most / atOnce.getOrDefault(loss.age(), 1));
                table.deaths[part(loss.stage(), loss.age() / eggWarmDays)] += everyday * loss.animals();
            }
            for (TrayHistory.Exposure span : tray.exposures()) {
                double middle = (span.fromAge() + span.toAge()) / 2;
                table.animalWarmDays[part(span.stage(), middle / eggWarmDays)] += span.animalWarmDays();
            }
        }
        return table;
    }

    /** The part of life of a stage, eggs by the share of their expected time they have lived. */
    static int part(Stage stage, double shareOfEggTime) {
        return stage == Stage.EGG
                ? (int) Math.max(0, Math.min(EGG_PARTS - 1, EGG_PARTS * shareOfEggTime))
                : EGG_PARTS + LATER.indexOf(stage);
    }

    LifeTable plus(LifeTable other) {
        LifeTable sum = new LifeTable(deaths.clone(), animalWarmDays.clone());
        for (int i = 0; i < PARTS; i++) {
            sum.deaths[i] += other.deaths[i];
            sum.animalWarmDays[i] += other.animalWarmDays[i];
        }
        return sum;
    }

    static LifeTable empty() {
        return new LifeTable(new double[PARTS], new double[PARTS]);
    }
}
