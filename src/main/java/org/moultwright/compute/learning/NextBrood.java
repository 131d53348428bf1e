package org.moultwright.compute.learning;

import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.moultwright.compute.stage.NormalBelief;

/**
 * What to believe of the next brood, from a belief about broods of the kind and those already seen.
 *
 * <p>Each brood's own quantities vary about those of its kind by a known covariance; what was seen of each has
 * its error.
 */
final class NextBrood {
    private NextBrood() {}

    /**
     * The belief about the next brood and how well its assumptions explain the earlier ones.
     *
     * @param kind belief about the kind's own quantities before any brood was seen
     * @param between covariance from brood to brood
     * @param broods what was found of each
     */
    static Update after(NormalBelief kind, double[][] between, List<NormalBelief> broods) {
        NormalBelief belief = kind;
        double logEvidence = 0;
        for (NormalBelief brood : broods) {
            Update update = Update.of(belief, new NormalBelief(brood.mean(), sum(brood.covariance(), between)));
            belief = update.belief();
            logEvidence += update.logEvidence();
        }
        return new Update(new NormalBelief(belief.mean(), sum(belief.covariance(), between)), logEvidence);
    }

    private static double[][] sum(double[][] first, double[][] second) {
        return MatrixUtils.createRealMatrix(first)
                .add(MatrixUtils.createRealMatrix(second))
                .getData();
    }
}
