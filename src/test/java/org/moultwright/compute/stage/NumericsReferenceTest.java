package org.moultwright.compute.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reference values: R's pnorm, qnorm; VGAM's beta-binomial fit of the lirat data (Moore & Tsiatis 1991). */
class NumericsReferenceTest {
    /** VGAM's lirat: foetuses in each of 58 litters of rats, and how many of them had died. */
    private static final int[] LITTERS = {
        10, 11, 12, 4, 10, 11, 9, 11, 10, 10, 12, 10, 8, 11, 6, 9, 14, 12, 11, 13, 14, 10, 12, 13, 10, 14, 13, 4, 8, 13,
        12, 10, 3, 13, 12, 14, 9, 13, 16, 11, 4, 1, 12, 8, 11, 14, 14, 11, 3, 13, 9, 17, 15, 2, 14, 8, 6, 17
    };

    private static final int[] DEAD = {
        1, 4, 9, 4, 10, 9, 9, 11, 10, 7, 12, 9, 8, 9, 4, 7, 14, 7, 9, 8, 5, 10, 10, 8, 10, 3, 13, 3, 8, 5, 12, 1, 1, 1,
        0, 4, 2, 2, 1, 0, 0, 0, 0, 0, 1, 0, 1, 0, 0, 0, 2, 2, 0, 0, 1, 0, 0, 0
    };

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

    /** R: f <- vglm(cbind(R, N - R) ~ 1, betabinomial, data = lirat); plogis(coef(f)); logLik(f). */
    @Test
    void correlatedLitters() {
        double sum = 0;
        for (int i = 0; i < LITTERS.length; i++) {
            sum += BetaBinomial.logProbability(DEAD[i], LITTERS[i], 0.465363247372292, 0.599975581298951);
        }
        assertThat(sum).isCloseTo(-123.326071306453, within(1e-9));
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
