package org.moultwright.compute.stage;

/**
 * One possible truth about a brood.
 *
 * @param logMedian log median age by boundary
 * @param logSpread log of the spread by boundary
 * @param neverLogit log odds of never passing by boundary
 * @param trayShift shift of log age by tray
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
public record StageParameters(double[] logMedian, double[] logSpread, double[] neverLogit, double[] trayShift) {
    /** How animals of one tray pass one boundary. */
    public PassingLaw law(int tray, int boundary) {
        return new PassingLaw(
                logMedian[boundary] + trayShift[tray],
                Math.exp(logSpread[boundary]),
                1 / (1 + Math.exp(-neverLogit[boundary])));
    }
}
