package org.moultwright.compute.stage;

/** One possible truth about a brood. What thousands of questions to it need is worked out once. Immutable. */
public final class StageParameters {
    private final double[] logMedian;
    private final double[] logSpread;
    private final double[] neverLogit;
    private final double[] trayShift;
    private final double ageShiftWarmDays;
    private final double[] spread;
    private final double[] median;
    private final double[] stuckShare;
    private final double[] neverShare;

    /**
     * One truth.
     *
     * @param logMedian log median age by boundary
     * @param logSpread log of the spread by boundary
     * @param neverLogit log odds that an animal which passed the boundary before, if any, never passes this one
     * @param trayShift shift of log age by tray
     * @param ageShiftWarmDays how much older all animals are than their stated age
     */
    StageParameters(
            double[] logMedian, double[] logSpread, double[] neverLogit, double[] trayShift, double ageShiftWarmDays) {
        this.logMedian = logMedian;
        this.logSpread = logSpread;
        this.neverLogit = neverLogit;
        this.trayShift = trayShift;
        this.ageShiftWarmDays = ageShiftWarmDays;
        this.spread = exponentials(logSpread);
        this.median = exponentials(logMedian);
        this.stuckShare = new double[neverLogit.length];
        this.neverShare = new double[neverLogit.length];
        double passing = 1;
        for (int k = 0; k < neverLogit.length; k++) {
            stuckShare[k] = 1 / (1 + Math.exp(-neverLogit[k]));
            passing *= 1 - stuckShare[k];
            neverShare[k] = 1 - passing;
        }
    }

    private static double[] exponentials(double[] logs) {
        double[] exponentials = new double[logs.length];
        for (int k = 0; k < logs.length; k++) {
            exponentials[k] = Math.exp(logs[k]);
        }
        return exponentials;
    }

    double[] logMedian() {
        return logMedian;
    }

    double[] logSpread() {
        return logSpread;
    }

    double[] neverLogit() {
        return neverLogit;
    }

    double[] trayShift() {
        return trayShift;
    }

    /** How animals of one tray pass one boundary. */
    public PassingLaw law(int tray, int boundary) {
        return new PassingLaw(
                logMedian[boundary] + trayShift[tray], spread[boundary], neverShare[boundary], ageShiftWarmDays);
    }

    /** The share of those past the boundary before that never pass this one. */
    public double stuckShare(int boundary) {
        return stuckShare[boundary];
    }

    /** The share of all animals that never pass a boundary. */
    double neverShare(int boundary) {
        return neverShare[boundary];
    }

    /** The stated age at which half the animals pass a boundary, trays left aside. */
    public double medianAge(int boundary) {
        return median[boundary] - ageShiftWarmDays;
    }
}
