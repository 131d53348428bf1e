package org.moultwright.compute.stage;

/**
 * One possible truth about a brood.
 *
 * @param logMedian log median age by boundary
 * @param logSpread log of the spread by boundary
 * @param neverLogit log odds that an animal which passed the boundary before, if any, never passes this one
 * @param trayShift shift of log age by tray
 * @param ageShiftWarmDays how much older all animals are than their stated age
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
public record StageParameters(
        double[] logMedian, double[] logSpread, double[] neverLogit, double[] trayShift, double ageShiftWarmDays) {
    /** How animals of one tray pass one boundary. */
    public PassingLaw law(int tray, int boundary) {
        return new PassingLaw(
                logMedian[boundary] + trayShift[tray],
                Math.exp(logSpread[boundary]),
                neverShare(boundary),
                ageShiftWarmDays);
    }

    /** The share of those past the boundary before that never pass this one. */
    public double stuckShare(int boundary) {
        return 1 / (1 + Math.exp(-neverLogit[boundary]));
    }

    /** The share of all animals that never pass a boundary. */
    double neverShare(int boundary) {
        double passing = 1;
        for (int k = 0; k <= boundary; k++) {
            passing *= 1 - stuckShare(k);
        }
        return 1 - passing;
    }

    /** The stated age at which half the animals pass a boundary, trays left aside. */
    public double medianAge(int boundary) {
        return Math.exp(logMedian[boundary]) - ageShiftWarmDays;
    }
}
