package org.moultwright.compute.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.stage.NormalBelief;

class MixtureTest {
    @Test
    void oneBeliefStandsForItself() {
        NormalBelief only = new NormalBelief(new double[] {1, 2}, new double[][] {{0.04, 0.01}, {0.01, 0.09}});
        NormalBelief matched = Mixture.matched(List.of(only, only), List.of(-3.0, -5.0));
        assertThat(matched.mean()).containsExactly(only.mean(), within(1e-12));
        for (int k = 0; k < 2; k++) {
            assertThat(matched.covariance()[k]).containsExactly(only.covariance()[k], within(1e-10));
        }
    }

    /**
     * Half as good as certain and half 0.2 wide: 20 % lie beyond where 40 % of the wide half do, at 0.841621 of its
     * standard deviations (standard normal table), which of a normal law is 1.281552 of its own.
     */
    @Test
    void aWideMinorityDoesNotWidenTheMiddle() {
        NormalBelief matched = Mixture.matched(List.of(about(0, 1e-6), about(0, 0.2)), List.of(0.0, 0.0));
        assertThat(Math.sqrt(matched.covariance()[0][0])).isCloseTo(0.2 * 0.841621 / 1.281552, within(1e-6));
    }

    @Test
    void beliefsApartAreAsWideAsTheyAreApart() {
        NormalBelief matched = Mixture.matched(List.of(about(-1, 1e-4), about(1, 1e-4)), List.of(0.0, 0.0));
        assertThat(matched.mean()[0]).isCloseTo(0, within(1e-12));
        assertThat(1.281552 * Math.sqrt(matched.covariance()[0][0])).isCloseTo(1, within(1e-3));
    }

    private static NormalBelief about(double mean, double sd) {
        return new NormalBelief(new double[] {mean}, new double[][] {{sd * sd}});
    }
}
