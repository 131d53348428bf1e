package org.moultwright.compute.forecast;

import java.util.Arrays;
import org.moultwright.compute.stage.Chance;

/**
 * One animal of the second simulator.
 *
 * @param moultDays the day it enters each stage after the egg; infinite where it never does
 * @param lastDay the day it dies; infinite where it lives
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record RearedAnimal(double[] moultDays, double lastDay) {
    /** Coefficient of variation of one stage's length from animal to animal. */
    private static final double LENGTH_VARIATION = 0.09;

    private static final double SHAPE = 1 / (LENGTH_VARIATION * LENGTH_VARIATION);

    /** Deaths per animal and day at the reference temperature, by stage, and after the last. */
    private static final double[] HAZARDS = {0.004, 0.0025, 0.002, 0.002};

    /**
     * One animal's life.
     *
     * @param lengths of its stages if it is a usual one, in days at the reference temperature
     * @param sum development of its place added up
     */
    static RearedAnimal of(double[] lengths, double frailty, Fates fates, double[] sum, double laidDay, Chance chance) {
        double[] moultDays = new double[lengths.length];
        Arrays.fill(moultDays, Double.POSITIVE_INFINITY);
        double start = RearingRoom.sumAt(sum, laidDay);
        double danger = -Math.log(1 - chance.uniform()) / frailty;
        if (chance.uniform() < fates.infertileShare()) {
            return new RearedAnimal(moultDays, RearingRoom.dayAt(sum, start + danger / HAZARDS[0]));
        }
        int slowStage = chance.uniform() < fates.laggardShare() ? chance.below(lengths.length) : -1;
        double age = 0;
        for (int stage = 0; stage < lengths.length; stage++) {
            double slowness = stage == slowStage ? 1.15 + 0.45 * chance.uniform() : 1;
            double length = lengths[stage] * slowness * chance.gamma(SHAPE) / SHAPE;
            if (danger < HAZARDS[stage] * length) {
                return new RearedAnimal(moultDays, RearingRoom.dayAt(sum, start + age + danger / HAZARDS[stage]));
            }
            danger -= HAZARDS[stage] * length;
            age += length;
            moultDays[stage] = RearingRoom.dayAt(sum, start + age);
        }
        return new RearedAnimal(moultDays, RearingRoom.dayAt(sum, start + age + danger / HAZARDS[lengths.length]));
    }

    /** What befalls the animals of a brood, in shares. */
    record Fates(double infertileShare, double laggardShare) {}

    RearedAnimal deadBy(double day) {
        return new RearedAnimal(moultDays, Math.min(lastDay, day));
    }

    boolean isAliveOn(double day) {
        return day < lastDay;
    }

    boolean everEnters(int boundary) {
        return moultDays[boundary] < lastDay;
    }

    /** How many stages it has entered by a day, no more after its death. */
    int stageOn(double day) {
        return (int) Arrays.stream(moultDays)
                .filter(moult -> moult <= Math.min(day, lastDay))
                .count();
    }
}
