package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The forecast against invented broods it was not modelled on, and against counting days. */
class ForecastAccuracyTest {
    private static final long SEED = 2026;

    @Test
    void beatsCountingDaysAndKnowsHowSureItIs() {
        BackTest test = BackTest.run(TriedKeeper.Simulator.FIRST, 8, 5, 1, SEED);
        beatsCountingDays(test);
        for (double share : BackTest.SHARES) {
            // Intervals of a keeper's first brood are wide on purpose: see decision 133.
            assertThat(test.at(share).coverage(Milestone.HALF))
                    .as("coverage at %s, seed %d%n%s", share, SEED, test.table())
                    .isBetween(0.70, 0.92);
        }
    }

    @Test
    void beatsCountingDaysAndAnimalsOnTheSecondSimulatorToo() {
        BackTest test = BackTest.run(TriedKeeper.Simulator.SECOND, 8, 5, 1, SEED);
        beatsCountingDays(test);
        for (double share : BackTest.SHARES) {
            // At 25 % of the time nothing has been seen, and the keepers know their kind better than they say.
            double most = share < 0.5 ? 0.97 : 0.9;
            assertThat(test.at(share).coverage(Milestone.HALF))
                    .as("coverage at %s, seed %d%n%s", share, SEED, test.table())
                    .isBetween(0.70, most);
            assertThat(test.at(share).yieldError())
                    .as("yield at %s, seed %d%n%s", share, SEED, test.table())
                    .isLessThan(test.at(share).yieldErrorOfAll());
        }
    }

    private static void beatsCountingDays(BackTest test) {
        for (double share : new double[] {0.5, 0.75}) {
            BackTestScore score = test.at(share);
            assertThat(score.error(Milestone.HALF))
                    .as("seed %d%n%s", SEED, test.table())
                    .isLessThan(score.calendarError())
                    .isLessThan(score.setPointError())
                    .isLessThan(score.restartedError());
        }
    }
}
