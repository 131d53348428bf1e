package org.moultwright.compute.forecast;

import java.util.List;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.StageParameters;
import org.moultwright.domain.Stage;

/**
 * How likely an animal is to live on: a hazard per warm-day in each part of life, times the brood's own frailty.
 *
 * <p>All is gamma-distributed: a common level of the kind's hazards, sharpened by the dead of all parts of life of
 * earlier broods, each brood telling no more than its frailty lets it; each part's hazard about that level, by its own
 * dead at half their weight, since broods differ; frailty by the brood's own dead, against those the hazards lead one
 * to expect.
 */
final class Mortality {
    /** Deaths per animal and warm-day in the egg, with legs, and later (assumption). */
    private static final double EGG_HAZARD = 0.006;

    private static final double POSTEMBRYO_HAZARD = 0.004;
    private static final double LATER_HAZARD = 0.003;

    private static final double LEVEL_SHAPE = 4;
    private static final double HAZARD_SHAPE = 6;
    private static final double EARLIER_WEIGHT = 0.5;
    private static final double FRAILTY_SHAPE = 4;

    private final List<Stage> boundaries;
    private final LifeTable earlier;
    private final int broods;
    private final LifeTable own;

    /**
     * The mortality of a brood.
     *
     * @param boundaries the stages after the egg, in order
     * @param earlier deaths of completed broods
     * @param broods how many those are
     * @param own deaths of this one so far
     */
    Mortality(List<Stage> boundaries, LifeTable earlier, int broods, LifeTable own) {
        this.boundaries = boundaries;
        this.earlier = earlier;
        this.broods = broods;
        this.own = own;
    }

    /** Possible hazards of this brood by part of life, its frailty included. */
    double[] draw(Chance chance) {
        double[] hazards = new double[LifeTable.PARTS];
        double level = level(chance);
        double dead = 0;
        double expected = 0;
        for (int part = 0; part < hazards.length; part++) {
            double shape = HAZARD_SHAPE + EARLIER_WEIGHT * earlier.deaths()[part];
            double rate = HAZARD_SHAPE / (level * usualHazard(part)) + EARLIER_WEIGHT * earlier.animalWarmDays()[part];
            hazards[part] = chance.gamma(shape) / rate;
            dead += own.deaths()[part];
            expected += own.animalWarmDays()[part] * hazards[part];
        }
        double frailty = chance.gamma(FRAILTY_SHAPE + dead) / (FRAILTY_SHAPE + expected);
        for (int part = 0; part < hazards.length; part++) {
            hazards[part] *= frailty;
        }
        return hazards;
    }

    /** How many times as dangerous as usual life is in broods of the kind. */
    private double level(Chance chance) {
        double dead = 0;
        double expected = 0;
        for (int part = 0; part < LifeTable.PARTS; part++) {
            dead += earlier.deaths()[part];
            expected += usualHazard(part) * earlier.animalWarmDays()[part];
        }
        // A brood's dead tell of its kind no more than its frailty lets them: as many as 1/(1/dead + 1/shape).
        double weight = 1 / (1 + dead / (FRAILTY_SHAPE * Math.max(1, broods)));
        return chance.gamma(LEVEL_SHAPE + weight * dead) / (LEVEL_SHAPE + weight * expected);
    }

    /** The chance of an animal to live from one age to another, stages lasting as their medians say. */
    double survival(double fromAge, double toAge, StageParameters parameters, double[] hazards) {
        double hatching = Math.max(0, parameters.medianAge(0));
        double sum = 0;
        for (int part = 0; part < LifeTable.EGG_PARTS; part++) {
            double start = hatching * part / LifeTable.EGG_PARTS;
            double end = hatching * (part + 1) / LifeTable.EGG_PARTS;
            sum += hazards[part] * overlap(fromAge, toAge, start, end);
        }
        double start = hatching;
        for (int k = 0; k < boundaries.size(); k++) {
            boolean isLast = k == boundaries.size() - 1;
            double end = isLast ? Double.POSITIVE_INFINITY : Math.max(start, parameters.medianAge(k + 1));
            sum += hazards[LifeTable.part(boundaries.get(k), 1)] * overlap(fromAge, toAge, start, end);
            start = end;
        }
        return Math.exp(-sum);
    }

    private static double overlap(double from, double to, double start, double end) {
        return Math.max(0, Math.min(end, to) - Math.max(start, from));
    }

    /** Deaths per animal and warm-day of a usual brood. */
    static double usualHazard(int part) {
        if (part < LifeTable.EGG_PARTS) {
            return EGG_HAZARD;
        }
        return part == LifeTable.part(Stage.POSTEMBRYO, 1) ? POSTEMBRYO_HAZARD : LATER_HAZARD;
    }
}
