package org.moultwright.compute.stage;

/**
 * What is believed of a brood's boundaries before its evidence. Logs of warm-days throughout.
 *
 * @param logMedian log median age at each boundary
 * @param logSpread log of the individual spread at each boundary
 * @param neverLogit log odds that an animal past the boundary before, if any, never passes each
 * @param traySd standard deviation of a tray's own shift of log age
 * @param ageHalfWidthWarmDays all ages may be off by a common constant, anywhere within this as likely
 */
public record StagePrior(
        NormalBelief logMedian,
        NormalBelief logSpread,
        NormalBelief neverLogit,
        double traySd,
        double ageHalfWidthWarmDays) {
    /** Boundaries. */
    public int size() {
        return logMedian.size();
    }
}
