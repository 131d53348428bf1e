package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.moultwright.compute.stage.NormalBelief;

class BelievedSpreadTest {
    private static final double[][] SHARES = {{1, 0, 0}, {0.6, 0.4, 0}, {0.5, 0.3, 0.2}};

    @Test
    void firstStageHasTheSpreadOfOneStage() {
        assertThat(Math.exp(BelievedSpread.of(SHARES).mean()[0])).isCloseTo(0.08, within(1e-12));
    }

    @Test
    void laterBoundariesHaveTheSpreadOfASumOfCorrelatedLengths() {
        // By hand: 0.08·√(0.36 + 0.16 + 2·0.1·0.24) and 0.08·√(0.25 + 0.09 + 0.04 + 2·0.1·(0.15 + 0.1 + 0.06)).
        double[] logSpread = BelievedSpread.of(SHARES).mean();
        assertThat(Math.exp(logSpread[1])).isCloseTo(0.08 * Math.sqrt(0.568), within(1e-12));
        assertThat(Math.exp(logSpread[2])).isCloseTo(0.08 * Math.sqrt(0.442), within(1e-12));
    }

    @Test
    void vagueOneIsAboutTheSameAndWider() {
        NormalBelief vague = BelievedSpread.vague(SHARES);
        NormalBelief usual = BelievedSpread.of(SHARES);
        assertThat(vague.mean()).containsExactly(usual.mean());
        assertThat(vague.covariance()[1][1]).isGreaterThan(4 * usual.covariance()[1][1]);
    }
}
