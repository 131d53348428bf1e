package org.moultwright.compute.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.compute.agreement.DisplayCheck.Uncertainty;
import org.moultwright.compute.agreement.DisplayCheck.Verdict;

class DisplayCheckTest {
    /** Combined: √(0.06² + 0.02² + 0.09²) = 0.11, so 0.22 with a coverage factor of 2. */
    private static final Uncertainty UNCERTAINTY = new Uncertainty(0.06, 0.02, 0.09);

    @ParameterizedTest
    @CsvSource({
        "27.0, 25.7, DISAGREES",
        "27.0, 26.75, AGREES",
        "27.0, 27.25, AGREES",
        "27.0, 26.6, CANNOT_TELL",
        "27.0, 26.3, CANNOT_TELL",
        "27.0, 26.27, DISAGREES"
    })
    void theVerdictAllowsForWhatCannotBeKnown(double display, double probe, Verdict verdict) {
        assertThat(UNCERTAINTY.expanded(2)).isCloseTo(0.22, within(1e-12));
        assertThat(new DisplayCheck(display, probe, UNCERTAINTY).verdict(0.5, 2))
                .isEqualTo(verdict);
    }

    @Test
    void theArithmeticIsThereToBeShown() {
        DisplayCheck.Judgement judgement = new DisplayCheck(27.0, 26.6, UNCERTAINTY).judge(0.5, 2);

        assertThat(judgement.difference()).isCloseTo(0.4, within(1e-12));
        assertThat(judgement.uncertainty().combined()).isCloseTo(0.11, within(1e-12));
        assertThat(judgement.reach()).isCloseTo(0.22, within(1e-12));
        assertThat(judgement.agreesWithin()).isCloseTo(0.28, within(1e-12));
        assertThat(judgement.disagreesBeyond()).isCloseTo(0.72, within(1e-12));
        assertThat(judgement.verdict()).isEqualTo(Verdict.CANNOT_TELL);
    }

    @Test
    void aDisplayOfWholeDegreesCanHardlyAgreeWithinHalfADegree() {
        Uncertainty ofWholeDegrees = Uncertainty.ofStep(0.05, 1, 0.1);

        // Half a step of a rectangular distribution, 0.5/√3 (JCGM 100:2008, 4.3.7).
        assertThat(ofWholeDegrees.resolution()).isCloseTo(0.5 / Math.sqrt(3), within(1e-12));
        assertThat(new DisplayCheck(27, 27, ofWholeDegrees).judge(0.5, 2).agreesWithin())
                .isNegative();
        assertThat(new DisplayCheck(27, 27, ofWholeDegrees).verdict(0.5, 2)).isEqualTo(Verdict.CANNOT_TELL);
    }

    @Test
    void aGreaterUncertaintyNeverTurnsCannotTellIntoAVerdict() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 2000; i++) {
            double probe = 27 + random.nextGaussian();
            double sd = random.nextDouble(0.5);
            DisplayCheck sure = new DisplayCheck(27, probe, new Uncertainty(sd, 0, 0));
            DisplayCheck lessSure = new DisplayCheck(27, probe, new Uncertainty(sd + random.nextDouble(0.5), 0, 0));
            if (sure.verdict(0.5, 2) == Verdict.CANNOT_TELL) {
                assertThat(lessSure.verdict(0.5, 2)).isEqualTo(Verdict.CANNOT_TELL);
            } else {
                assertThat(lessSure.verdict(0.5, 2)).isIn(Verdict.CANNOT_TELL, sure.verdict(0.5, 2));
            }
        }
    }
}
