package org.moultwright.compute.forecast;

import java.util.Arrays;
import java.util.List;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Stage;

/**
 * Deaths, and the animal-warm-days they were lost from, by part of life: the egg in quarters of its expected
 * length, then each later stage. Infertile eggs taken out are no deaths: that some never pass is the passing
 * model's. What was lost in a burst, such as mould makes, is left aside with the days about it: it tells little of other
 * days.
 *
 * @param deaths by part of life
 * @param animalWarmDays lived in it
 * @param bursts how often many died in a tray at once
 * @param trayWarmDays lived by trays, in which those happened
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record LifeTable(double[] deaths, double[] animalWarmDays, int bursts, double trayWarmDays) {
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
        BurstSense sense = BurstSense.of(trays, eggWarmDays);
        LifeTable table = new LifeTable(new double[PARTS], new double[PARTS], sense.bursts(), trayWarmDays(trays));
        for (BurstSense.Interval interval : sense.everyday()) {
            interval.losses()
                    .forEach(loss -> table.deaths[part(loss.stage(), loss.age() / eggWarmDays)] += loss.animals());
            interval.spans().forEach(span -> table.animalWarmDays[part(span, eggWarmDays)] += span.animalWarmDays());
        }
        return table;
    }

    private static double trayWarmDays(List<TrayHistory> trays) {
        return trays.stream()
                .mapToDouble(tray -> tray.exposures().isEmpty()
                        ? 0
                        : tray.exposures().get(tray.exposures().size() - 1).toAge()
                                - tray.exposures().get(0).fromAge())
                .sum();
    }

    /** The part of life of a stage, eggs by the share of their expected time they have lived. */
    static int part(Stage stage, double shareOfEggTime) {
        return stage == Stage.EGG
                ? (int) Math.max(0, Math.min(EGG_PARTS - 1, EGG_PARTS * shareOfEggTime))
                : EGG_PARTS + LATER.indexOf(stage);
    }

    /** The part of life in the middle of a span. */
    static int part(TrayHistory.Exposure span, double eggWarmDays) {
        return part(span.stage(), (span.fromAge() + span.toAge()) / 2 / eggWarmDays);
    }

    double dead() {
        return Arrays.stream(deaths).sum();
    }

    /** Dead to expect of a usual brood that lived as long. */
    double usualDead() {
        double expected = 0;
        for (int part = 0; part < PARTS; part++) {
            expected += Mortality.usualHazard(part) * animalWarmDays[part];
        }
        return expected;
    }

    /** Of all these broods together. */
    static LifeTable together(List<LifeTable> broods) {
        return broods.stream().reduce(empty(), LifeTable::plus);
    }

    private LifeTable plus(LifeTable other) {
        double[] dead = deaths.clone();
        double[] lived = animalWarmDays.clone();
        for (int i = 0; i < PARTS; i++) {
            dead[i] += other.deaths[i];
            lived[i] += other.animalWarmDays[i];
        }
        return new LifeTable(dead, lived, bursts + other.bursts, trayWarmDays + other.trayWarmDays);
    }

    static LifeTable empty() {
        return new LifeTable(new double[PARTS], new double[PARTS], 0, 0);
    }
}
