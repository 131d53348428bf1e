package org.moultwright.compute.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CusumReferenceTest {

    /** NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3. */
    @Test
    void theHandbooksExampleAgrees() {
        List<Cusum> sums = sums(
                325, 0.3175, 324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225, 324.600,
                324.625, 325.150, 328.325, 327.250, 327.825, 328.500, 326.675, 327.775, 326.875, 328.350);

        assertHigh(sums, 13, 3.01, 4.94, 7.45, 10.63, 11.99, 14.44, 16.00, 19.04);
        assertThat(firstBeyond(sums, 4.1959)).isEqualTo(14);
    }

    /** Montgomery, Introduction to Statistical Quality Control, table 9.1 with its C+ of table 9.2. */
    @Test
    void theTextbooksExampleAgrees() {
        List<Cusum> sums = sums(
                10, 0.5, 9.45, 7.99, 9.29, 11.66, 12.16, 10.18, 8.04, 11.46, 9.20, 10.34, 9.03, 11.47, 10.51, 9.40,
                10.08, 9.37, 10.62, 10.31, 8.52, 10.84, 10.90, 9.33, 12.29, 11.50, 10.60, 11.08, 10.38, 11.62, 11.31,
                10.52);

        assertHigh(sums, 24, 2.79, 2.89, 3.47, 3.35, 4.47, 5.28, 5.30);
        assertThat(firstBeyond(sums, 5)).isEqualTo(29);
    }

    @ParameterizedTest
    @CsvSource({
        // Shift in standard deviations, average run length with k = 0.5 and h = 4: Lucas & Crosier 1982.
        "0, 168",
        "0.5, 26.6",
        "1, 8.38",
        "1.5, 4.75",
        "2, 3.34",
        "3, 2.19"
    })
    void theAverageRunLengthAgrees(double shift, double published) {
        SplittableRandom random = new SplittableRandom(11);
        int runs = 20_000;
        double sum = 0;
        double squares = 0;
        for (int run = 0; run < runs; run++) {
            Cusum cusum = Cusum.ZERO;
            int length = 0;
            while (cusum.farther() <= 4) {
                cusum = cusum.after(shift + random.nextGaussian(), 0.5);
                length++;
            }
            sum += length;
            squares += (double) length * length;
        }
        double mean = sum / runs;
        double standardError = Math.sqrt((squares / runs - mean * mean) / runs);
        // Half of the last printed digit, and four standard errors of the simulation.
        double rounding = published > 100 ? 0.5 : published > 10 ? 0.05 : 0.005;
        assertThat(mean).isCloseTo(published, within(rounding + 4 * standardError));
    }

    @Test
    void bothSidesMirrorEachOther() {
        Cusum up = Cusum.ZERO.after(1.5, 0.25).after(-0.5, 0.25);
        Cusum down = Cusum.ZERO.after(-1.5, 0.25).after(0.5, 0.25);

        assertThat(up.high()).isEqualTo(down.low());
        assertThat(up.low()).isEqualTo(down.high());
    }

    private static List<Cusum> sums(double target, double slack, double... values) {
        List<Cusum> sums = new ArrayList<>();
        Cusum cusum = Cusum.ZERO;
        for (double value : values) {
            cusum = cusum.after(value - target, slack);
            sums.add(cusum);
        }
        return sums;
    }

    private static void assertHigh(List<Cusum> sums, int first, double... published) {
        for (int i = 0; i < published.length; i++) {
            // The handbook rounds on the way, so that its last digit may be one off.
            assertThat(sums.get(first - 1 + i).high()).as("value %d", first + i).isCloseTo(published[i], within(0.011));
        }
    }

    private static int firstBeyond(List<Cusum> sums, double limit) {
        for (int i = 0; i < sums.size(); i++) {
            if (sums.get(i).farther() > limit) {
                return i + 1;
            }
        }
        return 0;
    }
}
