package org.moultwright.compute.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Against the example of NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4. */
class AverageChartReferenceTest {
    private static final double[] VALUES = {
        52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4,
        53.6, 52.1
    };
    private static final double[] PRINTED = {
        50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38, 49.92,
        50.73, 51.23, 51.94, 51.99
    };
    private static final AverageChart CHART = new AverageChart(0.3, 50, 2.0539, 0);

    @Test
    void averagesAndLimitsAreThePublishedOnes() {
        double[] averages = CHART.averages(VALUES);
        for (int i = 0; i < PRINTED.length; i++) {
            assertThat(averages[i]).as("average %d", i + 1).isCloseTo(PRINTED[i], within(0.005001));
        }
        assertThat(CHART.upper()).isCloseTo(52.5884, within(5e-5));
        assertThat(CHART.lower()).isCloseTo(47.4115, within(1.001e-4));
        assertThat(CHART.beyondSince(averages)).isEmpty();
    }

    @Test
    void aShiftThatLastsIsFoundAndDatedAndOneThatEndedIsNot() {
        double[] shifted = DoubleStream.concat(Arrays.stream(VALUES), DoubleStream.of(54, 54, 54, 54, 54))
                .toArray();
        double[] averages = CHART.averages(shifted);
        int first = IntStream.range(0, averages.length)
                .filter(i -> averages[i] > CHART.upper())
                .findFirst()
                .orElseThrow();
        assertThat(CHART.beyondSince(averages)).hasValue(first);
        double[] ended = DoubleStream.concat(Arrays.stream(shifted), DoubleStream.of(50, 50, 50, 50))
                .toArray();
        assertThat(CHART.beyondSince(CHART.averages(ended))).isEmpty();
    }

    @Test
    void whereNothingShiftsAChartOfTenValuesSeldomSaysSo() {
        SplittableRandom random = new SplittableRandom(11);
        int signals = 0;
        int trials = 2_000;
        for (int trial = 0; trial < trials; trial++) {
            double[] all =
                    random.doubles(30).map(u -> Math.sqrt(12) * (u - 0.5) * 0.2).toArray();
            AverageChart chart = AverageChart.after(Arrays.copyOf(all, 10), 0.03);
            signals += isSignalled(chart, Arrays.copyOfRange(all, 10, 30)) ? 1 : 0;
        }
        assertThat(signals / (double) trials).isLessThan(0.03);
    }

    @Test
    void valuesAllAlikeStillLeaveTheirLastDigitsSpread() {
        AverageChart chart = AverageChart.after(new double[] {0.2, 0.2, 0.2}, 0.03);
        assertThat(isSignalled(chart, 0.21, 0.2)).isFalse();
        // The first average is 0.06 off, within limits of 0.064; the second is not.
        assertThat(chart.beyondSince(chart.averages(new double[] {0.4, 0.4, 0.4})))
                .hasValue(1);
    }

    @Test
    void weightsOutsideZeroAndOneAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new AverageChart(1.5, 0, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new AverageChart(0, 0, 1, 0));
    }

    private static boolean isSignalled(AverageChart chart, double... values) {
        return chart.beyondSince(chart.averages(values)).isPresent();
    }
}
