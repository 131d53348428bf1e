package org.moultwright.compute.learning;

import java.util.ArrayList;
import java.util.List;
import org.moultwright.compute.stage.NormalBelief;

/**
 * Learns when the next brood will reach its boundaries, and how far broods of the kind differ.
 *
 * <p>A brood has one speed of its own, and each stage's length an error of its own; how large those two
 * variations are is itself unknown, over a grid, each pair weighted by how well it explains the broods seen and
 * by heavy-tailed priors. The answer stands for the whole mixture ({@link Mixture}).
 */
final class MedianLearner {
    private static final double[] SPEED_SDS = {.01, .02, .035, .055, .08, .115, .16, .22};
    private static final double[] LENGTH_SDS = {.012, .022, .037, .06, .095, .14};

    /** Where the heavy-tailed priors of the two variations fall off (assumptions, from invented broods). */
    private static final double USUAL_SPEED_SD = 0.05;

    private static final double USUAL_LENGTH_SD = 0.04;

    private MedianLearner() {}

    /**
     * The belief about the next brood's log median ages.
     *
     * @param kind belief about the kind's own
     * @param lengthShares the share of each stage's length in the age at each boundary
     * @param broods what was found of each earlier brood
     */
    static NormalBelief next(NormalBelief kind, double[][] lengthShares, List<NormalBelief> broods) {
        List<Update> candidates = new ArrayList<>();
        List<Double> logWeights = new ArrayList<>();
        for (double speedSd : SPEED_SDS) {
            for (double lengthSd : LENGTH_SDS) {
                Update candidate = NextBrood.after(kind, between(speedSd, lengthSd, lengthShares), broods);
                candidates.add(candidate);
                logWeights.add(candidate.logEvidence() + logPrior(speedSd, lengthSd));
            }
        }
        return Mixture.matched(candidates.stream().map(Update::belief).toList(), logWeights);
    }

    static double[][] between(double speedSd, double lengthSd, double[][] lengthShares) {
        int size = lengthShares.length;
        double[][] between = new double[size][size];
        for (int k = 0; k < size; k++) {
            for (int l = 0; l < size; l++) {
                double lengths = 0;
                for (int m = 0; m < size; m++) {
                    lengths += lengthShares[k][m] * lengthShares[l][m];
                }
                between[k][l] = speedSd * speedSd + lengthSd * lengthSd * lengths;
            }
        }
        return between;
    }

    private static double logPrior(double speedSd, double lengthSd) {
        return -2 * Math.log1p(square(speedSd / USUAL_SPEED_SD) / 3)
                - 2 * Math.log1p(square(lengthSd / USUAL_LENGTH_SD) / 3)
                + 0.5 * Math.log(speedSd * lengthSd);
    }

    private static double square(double value) {
        return value * value;
    }
}
