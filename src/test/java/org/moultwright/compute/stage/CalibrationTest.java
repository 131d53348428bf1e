package org.moultwright.compute.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Simulation-based calibration (Talts et al. 2018): parameters drawn from the prior rank evenly among the draws
 * of the posterior of data made from them.
 */
class CalibrationTest {
    /** 99.9 % point of χ² with 9 degrees of freedom. */
    private static final double UNEVEN = 27.88;

    @Test
    void truthsRankEvenlyWhileAMoultIsInProgress() {
        assertEven(44);
    }

    @Test
    void truthsRankEvenlyWhenAllIsSeen() {
        assertEven(75);
    }

    private static void assertEven(double untilAge) {
        SimulatedRanks.histograms(untilAge)
                .forEach((name, ranks) -> assertThat(chiSquare(ranks))
                        .as("%s until %s warm-days: %s", name, untilAge, Arrays.toString(ranks))
                        .isLessThan(UNEVEN));
    }

    private static double chiSquare(int[] histogram) {
        double expected = (double) SimulatedRanks.REPEATS / SimulatedRanks.BINS;
        double sum = 0;
        for (int count : histogram) {
            sum += (count - expected) * (count - expected) / expected;
        }
        return sum;
    }
}
