package org.moultwright.compute.forecast;

import org.moultwright.compute.stage.Chance;

/**
 * One invented animal: the days at which it passes each boundary, and dies.
 *
 * @param passDays by boundary, in days of the room; infinite where it never does
 * @param deathDay infinite where it lives
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record SimulatedAnimal(double[] passDays, double deathDay) {
    private static final double DURATION_VARIATION = 0.075;
    private static final double LAGGARD_SHARE = 0.02;

    /** Gamma-distributed stage lengths, a few laggards, some infertile; lengths are in days at the reference. */
    static SimulatedAnimal born(
            double[] lengths,
            double infertileShare,
            double dailyHazard,
            double laidDay,
            SimulatedPace pace,
            Chance chance) {
        double shape = 1 / (DURATION_VARIATION * DURATION_VARIATION);
        double[] passDays = new double[lengths.length];
        boolean isInfertile = chance.uniform() < infertileShare;
        double slowness = chance.uniform() < LAGGARD_SHARE ? 1.05 + 0.15 * chance.uniform() : 1;
        double age = 0;
        for (int k = 0; k < lengths.length; k++) {
            age += lengths[k] * slowness * chance.gamma(shape) / shape;
            passDays[k] = isInfertile ? Double.POSITIVE_INFINITY : pace.dayAtAge(laidDay, age);
        }
        double life = -Math.log(1 - chance.uniform()) / dailyHazard;
        return new SimulatedAnimal(passDays, laidDay + life);
    }

    SimulatedAnimal dyingAt(double day) {
        return new SimulatedAnimal(passDays, Math.min(deathDay, day));
    }

    boolean isAlive(double day) {
        return day < deathDay;
    }

    /** How many boundaries it has passed by a day, no further than its death. */
    int stage(double day) {
        int passed = 0;
        for (double pass : passDays) {
            passed += pass <= Math.min(day, deathDay) ? 1 : 0;
        }
        return passed;
    }

    boolean everPasses(int boundary) {
        return passDays[boundary] < deathDay;
    }
}
