package org.moultwright.compute.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reference values: R's pnorm, qnorm; VGAM's beta-binomial fit of the lirat data (Moore & Tsiatis 1991). */
class NumericsReferenceTest {

    /** R: pnorm(-38, log.p = TRUE) = -726.55721601882. */
    @Test
    void logOfAFarTail() {
        assertThat(NormalTails.logCdf(-38)).isCloseTo(-726.55721601882, within(1e-10));
    }

    /** R: pnorm(-8) = 6.22096057427178e-16. */
    @Test
    void tail() {
        assertThat(NormalTails.survival(8) / 6.22096057427178e-16).isCloseTo(1, within(1e-12));
    }

    /** R: qnorm(1e-10) = -6.36134090240406. */
    @Test
    void inverseTail() {
        assertThat(NormalTails.inverseSurvival(1e-10)).isCloseTo(6.36134090240406, within(1e-12));
    }

    /** Over a narrow interval the difference is density times width: log φ(30) + log 1e-6, to first order. */
    @Test
    void differenceFarOut() {
        double logDensity = -30.0 * 30 / 2 - 0.5 * Math.log(2 * Math.PI);
        double expected = logDensity + Math.log(1e-6) - 30 * 0.5e-6;
        assertThat(NormalTails.logDifference(30, 30 + 1e-6)).isCloseTo(expected, within(1e-6));
    }

    /** By hand: with correlation 1/3 and mean 1/2 both parameters are 1, and all counts are alike. */
    @ParameterizedTest
    @CsvSource({"0, 4", "2, 4", "7, 10"})
    void uniformBetaBinomial(double successes, double trials) {
        assertThat(BetaBinomial.logProbability(successes, trials, 0.5, 1.0 / 3))
                .isCloseTo(-Math.log(trials + 1), within(1e-12));
    }

    /** By hand: 3 of 5 at chance 0.3 is 10 · 0.3³ · 0.7² = 0.1323. */
    @Test
    void binomialIsTheUncorrelatedCase() {
        assertThat(Math.exp(BetaBinomial.logProbability(3, 5, 0.3, 0))).isCloseTo(0.1323, within(1e-12));
        assertThat(Math.exp(BetaBinomial.logProbability(3, 5, 0.3, 1e-9))).isCloseTo(0.1323, within(1e-5));
    }

    @ParameterizedTest
    @CsvSource({"-9", "-7.999", "-1.2345", "0.00391", "2.5", "7.996", "9.5"})
    void quickTailFollowsTheExactOne(double z) {
        assertThat(QuickTail.survival(z) / NormalTails.survival(z)).isCloseTo(1, within(1e-7));
        double density = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
        assertThat(QuickTail.density(z) / density).isCloseTo(1, within(1e-6));
    }
}
