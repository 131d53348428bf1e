package org.moultwright.compute.forecast;

import org.moultwright.compute.stage.NormalBelief;

/**
 * How far apart the animals of a brood are believed to reach each boundary: the standard deviation of the log of
 * their ages.
 *
 * <p>Each stage takes every animal its own time. Were the slow in one stage slow in all, the spread would be the
 * same at every boundary; were stages independent, errors would partly cancel and it would fall from boundary to
 * boundary as √Σ share². The belief lies between, as if the lengths of two stages of an animal had a correlation
 * of {@link #BETWEEN_STAGES}. All figures are assumptions, from invented broods.
 */
final class BelievedSpread {
    /** Standard deviation of the log of one stage's length from animal to animal. */
    private static final double OF_A_STAGE = 0.078;

    private static final double BETWEEN_STAGES = 0.3;
    private static final double SHARED_SD = 0.36;
    private static final double OWN_SD = 0.17;

    /** So wide that a completed brood's own evidence decides. */
    private static final double VAGUE_SHARED_SD = 1;

    private static final double VAGUE_OWN_SD = 0.5;

    private BelievedSpread() {}

    /**
     * The belief about the log of each boundary's spread.
     *
     * @param lengthShares the share of each stage's length in the age at each boundary
     */
    static NormalBelief of(double[][] lengthShares) {
        return about(lengthShares, SHARED_SD, OWN_SD);
    }

    /** One that leaves a completed brood's own evidence to speak. */
    static NormalBelief vague(double[][] lengthShares) {
        return about(lengthShares, VAGUE_SHARED_SD, VAGUE_OWN_SD);
    }

    private static NormalBelief about(double[][] lengthShares, double sharedSd, double ownSd) {
        int size = lengthShares.length;
        double[] logSpread = new double[size];
        for (int k = 0; k < size; k++) {
            double squares = 0;
            for (double share : lengthShares[k]) {
                squares += share * share;
            }
            logSpread[k] = Math.log(OF_A_STAGE * Math.sqrt(squares + BETWEEN_STAGES * (1 - squares)));
        }
        return new NormalBelief(
                logSpread, NormalBelief.alike(size, 0, sharedSd, ownSd).covariance());
    }
}
