package org.moultwright.compute.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.agreement.LimitsOfAgreement.Interval;

/** Against Bland &amp; Altman 1986 (Lancet), 17 people's peak flow, first readings of two meters. */
class LimitsOfAgreementReferenceTest {
    private static final double[] LARGE_METER = {
        494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427
    };
    private static final double[] MINI_METER = {
        512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451
    };
    private static final double[] DIFFERENCES = IntStream.range(0, LARGE_METER.length)
            .mapToDouble(i -> LARGE_METER[i] - MINI_METER[i])
            .toArray();

    @Test
    void twoStandardDeviationsGiveThePublishedLimits() {
        LimitsOfAgreement limits = LimitsOfAgreement.of(DIFFERENCES, 2);

        assertThat(limits.bias()).isCloseTo(-2.1, within(0.05));
        assertThat(limits.sd()).isCloseTo(38.8, within(0.05));
        // Printed -79.7 and 75.5, from the rounded bias and deviation; unrounded -79.648 and 75.413.
        assertThat(limits.lower()).isCloseTo(-79.7, within(0.06)).isCloseTo(-79.648, within(5e-4));
        assertThat(limits.upper()).isCloseTo(75.5, within(0.1)).isCloseTo(75.413, within(5e-4));
        assertThat(limits.limitStandardError()).isCloseTo(16.3, within(0.05));
    }

    @Test
    void theConfidenceLimitsAreThePublishedOnes() {
        LimitsOfAgreement limits = LimitsOfAgreement.of(DIFFERENCES, 2);

        // Printed with the t of 16 degrees of freedom as 2.12 and rounded standard errors.
        assertThat(limits.biasInterval(0.95).from()).isCloseTo(-22.0, within(0.06));
        assertThat(limits.biasInterval(0.95).to()).isCloseTo(17.8, within(0.06));
        assertThat(limits.lowerInterval(0.95).from()).isCloseTo(-114.3, within(0.15));
        assertThat(limits.lowerInterval(0.95).to()).isCloseTo(-45.1, within(0.1));
        assertThat(limits.upperInterval(0.95).from()
                        - limits.lowerInterval(0.95).from())
                .isCloseTo(limits.upper() - limits.lower(), within(1e-9));
    }

    @Test
    void ninetyFivePercentLimitsAreAsComputed() {
        LimitsOfAgreement limits = LimitsOfAgreement.of(DIFFERENCES, LimitsOfAgreement.SPREAD_95);

        // Computed independently.
        assertThat(limits.bias()).isCloseTo(-2.1176, within(5e-5));
        assertThat(limits.sd()).isCloseTo(38.7651, within(5e-5));
        assertThat(limits.lower()).isCloseTo(-78.097, within(5e-4));
        assertThat(limits.upper()).isCloseTo(73.862, within(5e-4));
    }

    @Test
    void theLimitsHoldAboutNinetyFivePercentOfNormalDifferences() {
        SplittableRandom random = new SplittableRandom(1);
        double[] differences = IntStream.range(0, 20_000)
                .mapToDouble(i -> random.nextGaussian())
                .toArray();
        LimitsOfAgreement limits = LimitsOfAgreement.of(differences, LimitsOfAgreement.SPREAD_95);
        long inside = Arrays.stream(differences)
                .filter(difference -> difference >= limits.lower() && difference <= limits.upper())
                .count();
        Interval bias = limits.biasInterval(0.999);

        assertThat(inside / 20_000.0).isBetween(0.944, 0.956);
        assertThat(bias.from()).isNegative();
        assertThat(bias.to()).isPositive();
    }

    @Test
    void onePairTellsNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> LimitsOfAgreement.of(new double[] {1}, 2));
    }
}
