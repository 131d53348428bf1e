package org.moultwright.compute.forecast;

import org.moultwright.compute.stage.Chance;

/**
 * What an invented keeper's broods have in common: a species slower or faster than believed, and an incubator
 * whose display and probe are both off.
 *
 * @param stageDays true typical length of each stage, in days at the reference temperature
 * @param usualCelsius the set-point the keeper favours
 * @param displayOffsetCelsius how much warmer it is than displayed
 * @param probeOffsetCelsius how much too high the probe reads
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record SimulatedHusbandry(
        double[] stageDays, double usualCelsius, double displayOffsetCelsius, double probeOffsetCelsius) {
    /** Median age at each boundary that every keeper believes in, in days at the reference temperature. */
    static final double[] BELIEVED_DAYS = {30, 46, 72};

    private static final double SPECIES_SD = 0.08;
    private static final double STAGE_SD = 0.04;
    private static final double DISPLAY_OFFSET_SD = 0.3;
    private static final double PROBE_OFFSET_SD = 0.4;

    static SimulatedHusbandry of(Chance chance) {
        double species = Math.exp(SPECIES_SD * chance.normal());
        double[] stageDays = new double[BELIEVED_DAYS.length];
        for (int k = 0; k < stageDays.length; k++) {
            double believed = BELIEVED_DAYS[k] - (k == 0 ? 0 : BELIEVED_DAYS[k - 1]);
            stageDays[k] = believed * species * Math.exp(STAGE_SD * chance.normal());
        }
        return new SimulatedHusbandry(
                stageDays,
                25.5 + 2 * chance.uniform(),
                DISPLAY_OFFSET_SD * chance.normal(),
                PROBE_OFFSET_SD * chance.normal());
    }
}
