package org.moultwright.compute.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.stage.NormalBelief;

class MedianLearnerTest {
    private static final double[][] SHARES = {{1, 0}, {0.6, 0.4}};
    private static final NormalBelief KIND =
            new NormalBelief(new double[] {3.4, 4.2}, MedianLearner.between(0.12, 0.07, SHARES));

    @Test
    void withoutBroodsTheBeliefStands() {
        NormalBelief next = MedianLearner.next(KIND, SHARES, List.of());
        assertThat(next.mean()).containsExactly(KIND.mean(), within(1e-12));
        assertThat(next.covariance()[0][0]).isGreaterThan(KIND.covariance()[0][0]);
    }

    @Test
    void broodsMoveTheBeliefTheirWayAndNarrowIt() {
        NormalBelief one = MedianLearner.next(KIND, SHARES, List.of(brood(3.6, 4.4)));
        assertThat(one.mean()[0]).isBetween(3.45, 3.6);
        NormalBelief many = MedianLearner.next(KIND, SHARES, Collections.nCopies(12, brood(3.6, 4.4)));
        assertThat(many.mean()[0]).isCloseTo(3.6, within(0.01));
        assertThat(many.covariance()[0][0]).isLessThan(one.covariance()[0][0]).isLessThan(0.03 * 0.03);
    }

    @Test
    void broodsThatDisagreeKeepItWide() {
        NormalBelief steady = MedianLearner.next(KIND, SHARES, List.of(brood(3.4, 4.2), brood(3.41, 4.21)));
        NormalBelief wild = MedianLearner.next(KIND, SHARES, List.of(brood(3.2, 4.0), brood(3.6, 4.4)));
        assertThat(wild.mean()[0]).isCloseTo(3.4, within(0.01));
        assertThat(wild.covariance()[0][0]).isGreaterThan(3 * steady.covariance()[0][0]);
    }

    @Test
    void aBoundaryNobodySawIsLearnedOnlyThroughTheOther() {
        NormalBelief half = new NormalBelief(new double[] {3.6, 4.2}, new double[][] {{1e-4, 0}, {0, 4}});
        NormalBelief next = MedianLearner.next(KIND, SHARES, List.of(half));
        assertThat(next.mean()[1]).isBetween(4.25, 4.4);
        NormalBelief bothSeen = MedianLearner.next(KIND, SHARES, List.of(brood(3.6, 4.4)));
        assertThat(next.covariance()[1][1]).isGreaterThan(bothSeen.covariance()[1][1]);
    }

    private static NormalBelief brood(double first, double second) {
        return new NormalBelief(new double[] {first, second}, new double[][] {{1e-4, 0}, {0, 1e-4}});
    }
}
