package org.moultwright.compute.forecast;

import org.moultwright.compute.stage.Chance;

/**
 * What the broods of one keeper of the second simulator share: the species' true stage lengths, the temperature the
 * keeper likes, and by how much incubator display and probe are off.
 *
 * @param stageDays true typical length of each stage, in days at {@link RearedBrood#REFERENCE_CELSIUS}
 * @param likedCelsius mean of the set-points chosen
 * @param warmerThanShown how much warmer the incubator is than its display says, in K
 * @param probeTooHigh how much too high the probe reads, in K
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record RearingHouse(double[] stageDays, double likedCelsius, double warmerThanShown, double probeTooHigh) {
    /** Ages at the boundaries that every keeper believes in, in days at the reference temperature. */
    private static final double[] BELIEVED = {26, 43, 68};

    private static final double SPECIES_SD = 0.042;
    private static final double SPECIES_STAGE_SD = 0.03;
    private static final double DISPLAY_SD = 0.35;
    private static final double PROBE_SD = 0.4;

    static RearingHouse of(Chance chance) {
        double species = Math.exp(SPECIES_SD * chance.normal());
        double[] stageDays = new double[BELIEVED.length];
        for (int stage = 0; stage < stageDays.length; stage++) {
            double length = BELIEVED[stage] - (stage == 0 ? 0 : BELIEVED[stage - 1]);
            stageDays[stage] = length * species * Math.exp(SPECIES_STAGE_SD * chance.normal());
        }
        return new RearingHouse(
                stageDays, 26 + 1.5 * chance.uniform(), DISPLAY_SD * chance.normal(), PROBE_SD * chance.normal());
    }

    static double[] believed() {
        return BELIEVED.clone();
    }
}
