package org.moultwright.compute.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.compute.Fixture;
import org.moultwright.domain.RateForm;

/**
 * The mean rate over a sine against single-sine degree-days: those of Zalom et al. 1983, table 7 (°F, thresholds
 * 50 and 85), and the others of rates.csv beside this test; curves without a kink against closed forms.
 */
class SineMeanReferenceTest {
    private static final Fixture RATES = Fixture.at("rate/rates.csv");

    @ParameterizedTest
    @CsvSource({
        "zalom83.row7, sng_sine, 45, 77, 50, 85",
        "zalom83.row8, sng_sine, 40, 65, 50, 85",
        "zalom83.row9, sng_sine, 55, 95, 50, 85",
        "zalom83.row10, sng_sine, 70, 90, 50, 85",
        "zalom83.row11, sng_sine, 45, 96, 50, 85",
        "zalom83.row12, sng_sine, 43, 90, 50, 85",
        "dd.7/14.L12.U33, sine, 7, 14, 12, 33",
        "dd.13/40.L12.U33, sine, 13, 40, 12, 33",
        "dd.7/40.L12.U33, sine, 7, 40, 12, 33",
        "dd.19.3/27.9.L11.5.U30, sine, 19.3, 27.9, 11.5, 30",
        "dd.24.2/25.8.L11.5.U30, sine, 24.2, 25.8, 11.5, 30",
        "dd.5/22.L10.UNone, sine, 5, 22, 10, 1000",
        "dd.8.5/31.2.L10.UNone, sine, 8.5, 31.2, 10, 1000"
    })
    void ofTheCutOffLineItIsThePublishedSingleSine(
            String row, String quantity, double lowest, double highest, double lower, double upper) {
        assertThat(SineMean.of(cutOff(lower, upper), lowest, highest))
                .isCloseTo(RATES.value(row, quantity), within(1e-5 * (highest - lowest)));
    }

    @Test
    void ofAnyCutOffLineItIsTheClosedForm() {
        SplittableRandom random = new SplittableRandom(1983);
        for (int i = 0; i < 500; i++) {
            double lowest = random.nextDouble(0, 30);
            double highest = lowest + random.nextDouble(0.01, 25);
            double lower = random.nextDouble(5, 25);
            double upper = lower + random.nextDouble(0, 20);
            assertThat(SineMean.of(cutOff(lower, upper), lowest, highest))
                    .as("%s to %s between %s and %s", lowest, highest, lower, upper)
                    .isCloseTo(DegreeDays.singleSine(lowest, highest, lower, upper), within(1e-5 * (highest - lowest)));
        }
    }

    /** The mean of sin², being a half, gives that of a square: M² + W²/2. */
    @Test
    void ofASquareItIsTheClosedForm() {
        assertThat(SineMean.of(celsius -> celsius * celsius, 20, 30)).isCloseTo(25 * 25 + 5 * 5 / 2.0, within(1e-9));
    }

    @Test
    void withoutAnyRangeItIsTheRateItself() {
        RateCurve briere = RateCurves.briere1(1, 11, 38);
        assertThat(SineMean.of(briere, 27, 27)).isCloseTo(briere.at(27), within(1e-9));
    }

    /** Computed by quadrature of the curve over the sine. */
    @Test
    void aBentCurveGivesLessOverAWideSwing() {
        RateCurve general = RateCurve.of(new RateForm.Briere1(11, 38));
        assertThat(SineMean.of(general, 22, 32) / general.at(27)).isCloseTo(0.957, within(5e-4));
        assertThat(SineMean.of(general, 25, 29) / general.at(27)).isCloseTo(0.993, within(5e-4));
    }

    private static RateCurve cutOff(double lower, double upper) {
        return celsius -> Math.min(Math.max(celsius - lower, 0), upper - lower);
    }
}
