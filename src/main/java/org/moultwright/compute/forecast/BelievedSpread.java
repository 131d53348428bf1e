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
    private static final double OF_A_STAGE = 0.08;

    private static final double BETWEEN_STAGES = 0.1;

    /** However short a stage, the age at its end is not that at its beginning (assumption). */
    private static final double MOST_ALIKE = 0.95;

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

    /**
     * How an animal's log age at each boundary correlates with that at the boundary before; 0 at the first.
     *
     * @param lengthShares the share of each stage's length in the age at each boundary
     */
    static double[] likeBefore(double[][] lengthShares) {
        double[] like = new double[lengthShares.length];
        for (int k = 1; k < like.length; k++) {
            double[] here = lengthShares[k];
            double[] before = lengthShares[k - 1];
            double both = together(before, here);
            like[k] = Math.min(MOST_ALIKE, both / Math.sqrt(together(before, before) * together(here, here)));
        }
        return like;
    }

    /** Covariance of log ages at two boundaries, a stage's variance being 1. */
    private static double together(double[] shares, double[] others) {
        double sum = 0;
        for (int m = 0; m < shares.length; m++) {
            for (int n = 0; n < others.length; n++) {
                sum += shares[m] * others[n] * (m == n ? 1 : BETWEEN_STAGES);
            }
        }
        return sum;
    }

    private static NormalBelief about(double[][] lengthShares, double sharedSd, double ownSd) {
        int size = lengthShares.length;
        double[] logSpread = new double[size];
        for (int k = 0; k < size; k++) {
            logSpread[k] = Math.log(OF_A_STAGE * Math.sqrt(together(lengthShares[k], lengthShares[k])));
        }
        return new NormalBelief(
                logSpread, NormalBelief.alike(size, 0, sharedSd, ownSd).covariance());
    }
}
