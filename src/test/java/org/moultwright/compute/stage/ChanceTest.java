package org.moultwright.compute.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ChanceTest {
    private static final int DRAWS = 20_000;

    @Test
    void binomialHasItsMeanAndVariance() {
        assertThat(mean(chance -> chance.binomial(300, 0.2))).isCloseTo(60, within(0.25));
        assertThat(mean(chance -> Math.pow(chance.binomial(300, 0.2) - 60.0, 2)))
                .isCloseTo(48, within(2.5));
    }

    /** Of the 16 equally likely falls of four coins one has no head, and four have one. */
    @Test
    void fewTrialsAreCountedOut() {
        for (double heads : new double[] {0, 1}) {
            assertThat(mean(chance -> chance.binomial(4, 0.5) == heads ? 1 : 0))
                    .isCloseTo(heads == 0 ? 1 / 16.0 : 4 / 16.0, within(0.01));
        }
        assertThat(mean(chance -> chance.binomial(30, 0.9) == 30 ? 1 : 0)).isCloseTo(Math.pow(0.9, 30), within(0.005));
    }

    @Test
    void binomialKeepsItsBounds() {
        Chance chance = new Chance(1);
        assertThat(chance.binomial(20_000, 1)).isEqualTo(20_000);
        assertThat(chance.binomial(20_000, 0)).isZero();
        assertThat(chance.binomial(0, 0.5)).isZero();
    }

    @Test
    void correlationWidensTheBinomial() {
        double variance = 50 * 0.25 * (1 + 49 * 0.1);
        assertThat(mean(chance -> Math.pow(chance.betaBinomial(50, 0.5, 0.1) - 25.0, 2)))
                .isCloseTo(variance, within(0.05 * variance));
    }

    @Test
    void orderStatisticHasItsMean() {
        assertThat(mean(chance -> chance.orderStatistic(3, 9, 0))).isCloseTo(0.3, within(0.005));
    }

    /** The third smallest of nine, sorted out of nine uniform draws again and again. */
    @Test
    void orderStatisticIsThatOfSortedDraws() {
        Random random = new Random(7);
        double[] sorted = IntStream.range(0, DRAWS)
                .mapToDouble(
                        draw -> random.doubles(9).sorted().skip(2).findFirst().orElseThrow())
                .toArray();
        for (double share : new double[] {0.1, 0.2, 0.3, 0.45, 0.6}) {
            double below = Arrays.stream(sorted).filter(third -> third < share).count() / (double) DRAWS;
            assertThat(mean(chance -> chance.orderStatistic(3, 9, 0) < share ? 1 : 0))
                    .isCloseTo(below, within(0.015));
        }
    }

    @Test
    void sameSeedSameDraws() {
        assertThat(new Chance(5).normal()).isEqualTo(new Chance(5).normal());
    }

    private static double mean(ToDoubleFunction<Chance> draw) {
        Chance chance = new Chance(42);
        double sum = 0;
        for (int i = 0; i < DRAWS; i++) {
            sum += draw.applyAsDouble(chance);
        }
        return sum / DRAWS;
    }
}
