package org.moultwright.compute.stage;

/**
 * What is believed of a brood's boundaries before its evidence. Logs of warm-days throughout.
 *
 * @param logMedian expected log median age at each boundary
 * @param covariance of those
 * @param logSpread expected log of the individual spread at each boundary
 * @param logSpreadSd its standard deviation
 * @param neverLogit expected log odds of never passing each boundary
 * @param neverLogitSd its standard deviation
 * @param traySd standard deviation of a tray's own shift of log age
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
public record StagePrior(
        double[] logMedian,
        double[][] covariance,
        double[] logSpread,
        double logSpreadSd,
        double[] neverLogit,
        double neverLogitSd,
        double traySd) {
    /** Boundaries. */
    public int size() {
        return logMedian.length;
    }
}
