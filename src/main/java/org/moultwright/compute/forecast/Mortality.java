package org.moultwright.compute.forecast;

import java.util.List;
import java.util.stream.Stream;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.StageParameters;
import org.moultwright.domain.Stage;

/**
 * How likely an animal is to live on: a hazard per warm-day in each part of life, times the brood's own frailty.
 *
 * <p>All is gamma-distributed: a common level of the kind's hazards and how far its broods differ ({@link KindDanger}),
 * sharpened by the dead of earlier broods and of this one; each part's hazard about that level, by its own dead at half
 * their weight, since broods differ; frailty by the brood's own dead, against those the hazards lead one to expect.
 */
final class Mortality {
    /** Deaths per animal and warm-day in the egg, with legs, and later (assumption). */
    private static final double EGG_HAZARD = 0.006;

    private static final double POSTEMBRYO_HAZARD = 0.004;
    private static final double LATER_HAZARD = 0.003;

    private static final double HAZARD_SHAPE = 6;
    private static final double EARLIER_WEIGHT = 0.5;

    private final List<Stage> boundaries;
    private final LifeTable earlier;
    private final LifeTable own;
    private final double ownDead;
    private final KindDanger kind;

    /**
     * The mortality of a brood.
     *
     * @param boundaries the stages after the egg, in order
     * @param earlier deaths of each completed brood
     * @param own deaths of this one so far
     */
    Mortality(List<Stage> boundaries, List<LifeTable> earlier, LifeTable own) {
        this.boundaries = boundaries;
        this.earlier = LifeTable.together(earlier);
        this.own = own;
        this.ownDead = own.dead();
        this.kind =
                new KindDanger(Stream.concat(earlier.stream(), Stream.of(own)).toList());
    }

    /** Possible hazards of this brood by part of life, its frailty included. */
    double[] draw(Chance chance) {
        double[] hazards = new double[LifeTable.PARTS];
        KindDanger.Danger danger = kind.draw(chance);
        double expected = 0;
        for (int part = 0; part < hazards.length; part++) {
            double shape = HAZARD_SHAPE + EARLIER_WEIGHT * earlier.deaths()[part];
            double rate = HAZARD_SHAPE / (danger.level() * usualHazard(part))
                    + EARLIER_WEIGHT * earlier.animalWarmDays()[part];
            hazards[part] = chance.gamma(shape) / rate;
            expected += own.animalWarmDays()[part] * hazards[part];
        }
        double frailty = chance.gamma(danger.frailtyShape() + ownDead) / (danger.frailtyShape() + expected);
        for (int part = 0; part < hazards.length; part++) {
            hazards[part] *= frailty;
        }
        return hazards;
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
