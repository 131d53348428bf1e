package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The forecast against invented broods it was not modelled on, and against counting days. */
class ForecastAccuracyTest {
    private static final int KEEPERS = 14;
    private static final long SEED = 2026;

    @ParameterizedTest
    @EnumSource
    void beatsCountingDaysAndKnowsHowSureItIs(TriedKeeper.Simulator simulator) {
        BackTest test = BackTest.run(simulator, KEEPERS, 2, 1, SEED);
        for (double share : new double[] {0.5, 0.75}) {
            BackTestScore score = test.at(share);
            assertThat(score.error(Milestone.HALF))
                    .as("seed %d%n%s", SEED, test.table())
                    .isLessThan(score.calendarError())
                    .isLessThan(score.setPointError());
        }
        for (double share : BackTest.SHARES) {
            assertThat(test.at(share).coverage(Milestone.HALF))
                    .as("coverage at %s, seed %d%n%s", share, SEED, test.table())
                    .isBetween(0.70, 0.90);
        }
    }
}
