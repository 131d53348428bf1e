package org.moultwright.compute.forecast;

import java.util.Arrays;
import java.util.List;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Stage;

/**
 * Deaths, and the animal-warm-days they were lost from, by part of life: the egg in quarters of its expected
 * length, then each later stage. Infertile eggs taken out are no deaths: that some never pass is the passing
 * model's.
 *
 * @param deaths by part of life
 * @param animalWarmDays lived in it
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record LifeTable(double[] deaths, double[] animalWarmDays) {
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
            for (TrayHistory.Loss loss : tray.losses()) {
                table.deaths[part(loss.stage(), loss.age() / eggWarmDays)] += loss.animals();
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
