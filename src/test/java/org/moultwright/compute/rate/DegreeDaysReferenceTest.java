package org.moultwright.compute.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.compute.Fixture;

/**
 * Single-sine degree-days from rates.csv beside this test. The days of Zalom et al. 1983, table 7, are in °F
 * between thresholds of 50 and 85; the lowest and highest given here are the only whole numbers that give
 * both the single-triangle and the single-sine figure of their row.
 */
class DegreeDaysReferenceTest {
    private static final Fixture RATES = Fixture.at("rate/rates.csv");

    @ParameterizedTest
    @CsvSource({
        "zalom83.row7, 45, 77",
        "zalom83.row8, 40, 65",
        "zalom83.row9, 55, 95",
        "zalom83.row10, 70, 90",
        "zalom83.row11, 45, 96",
        "zalom83.row12, 43, 90"
    })
    void theTableOfZalomIsMet(String row, double lowest, double highest) {
        assertThat(DegreeDays.singleSine(lowest, highest, 50, 85))
                .isCloseTo(RATES.value(row, "sng_sine"), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "dd.7/14.L12.U33, 7, 14, 12, 33",
        "dd.13/40.L12.U33, 13, 40, 12, 33",
        "dd.7/40.L12.U33, 7, 40, 12, 33",
        "dd.19.3/27.9.L11.5.U30, 19.3, 27.9, 11.5, 30",
        "dd.24.2/25.8.L11.5.U30, 24.2, 25.8, 11.5, 30"
    })
    void daysBetweenTwoThresholdsAreMet(String name, double lowest, double highest, double lower, double upper) {
        assertThat(DegreeDays.singleSine(lowest, highest, lower, upper))
                .isCloseTo(RATES.value(name, "sine"), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"dd.5/22.L10.UNone, 5, 22", "dd.8.5/31.2.L10.UNone, 8.5, 31.2"})
    void daysAboveOneThresholdAreMet(String name, double lowest, double highest) {
        assertThat(DegreeDays.singleSine(lowest, highest, 10)).isCloseTo(RATES.value(name, "sine"), within(1e-9));
    }

    @Test
    void aDayWhollyOutsideTheThresholdsGivesAllOrNothing() {
        assertThat(DegreeDays.singleSine(40, 48, 50, 85)).isZero();
        assertThat(DegreeDays.singleSine(88, 99, 50, 85)).isEqualTo(35);
    }
}
