package org.moultwright.compute.frequency;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.Fixture;

/**
 * The western spruce budworm of Dennis, Kemp and Beckwith 1986, Environ. Entomol. 15:540-546, as corrected by
 * Candy 1990: budworm.csv, and the fits of fits.csv, beside this test.
 */
class StageFrequencyReferenceTest {
    private static final Fixture R = Fixture.at("frequency/fits.csv");
    private static final List<StageSample> BUDWORM = Fixture.at("frequency/budworm.csv").rows().stream()
            .map(row -> new StageSample(
                    Double.parseDouble(row.get("ddeg")),
                    IntStream.rangeClosed(1, 7)
                            .mapToObj(stage -> Integer.valueOf(row.get("stage" + stage)))
                            .toList()))
            .toList();

    @Test
    void theFitWithVarianceProportionalToTimeIsThePublishedOne() {
        StageFrequency fit = StageFrequency.fit(Spread.ROOT_OF_TIME, BUDWORM);

        // The published replication: a and b² as printed.
        double[] replicated = {120.039, 204.665, 264.590, 341.291, 464.477, 595.707};
        for (int j = 0; j < replicated.length; j++) {
            assertThat(fit.medians().get(j)).isCloseTo(replicated[j], within(1e-3));
            assertThat(fit.medians().get(j))
                    .isCloseTo(R.value("budworm.power0.5.logit", "a[" + (j + 1) + "]"), within(1e-4));
        }
        assertThat(fit.scale() * fit.scale()).isCloseTo(1.412, within(1e-3));
        assertThat(fit.scale()).isCloseTo(R.value("budworm.power0.5.logit", "b"), within(1e-5));
        assertThat(fit.logLikelihood()).isCloseTo(R.value("budworm.power0.5.logit", "logLik.kernel"), within(1e-6));
    }

    @Test
    void theCumulativeLogitIsThePublishedOne() {
        StageFrequency fit = StageFrequency.fit(Spread.CONSTANT, BUDWORM);

        // Candy 1991 as replicated, and R's ordinal::clm.
        double[] replicated = {5.4657, 9.3641, 12.2064, 15.6714, 21.2199, 27.1909};
        for (int j = 0; j < replicated.length; j++) {
            double cut = fit.medians().get(j) / fit.scale();
            assertThat(cut).isCloseTo(replicated[j], within(1e-4));
            assertThat(cut)
                    .isCloseTo(
                            R.value("budworm.clm.constvar.logit", "coef[%d|%d]".formatted(j + 1, j + 2)), within(1e-6));
        }
        assertThat(1 / fit.scale()).isCloseTo(0.045599, within(1e-6));
        assertThat(fit.logLikelihood()).isCloseTo(R.value("budworm.clm.constvar.logit", "logLik"), within(1e-6));
    }

    @Test
    void sharesRiseFromStageToStageUpToAll() {
        StageFrequency fit = StageFrequency.fit(Spread.ROOT_OF_TIME, BUDWORM);

        for (double time = 50; time < 700; time += 25) {
            for (int stage = 1; stage < 7; stage++) {
                assertThat(fit.shareUpTo(stage, time)).isGreaterThanOrEqualTo(fit.shareUpTo(stage - 1, time));
            }
            assertThat(fit.shareUpTo(6, time)).isEqualTo(1);
        }
        assertThat(fit.shareUpTo(0, fit.medians().get(0))).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void refusesAStageNobodySaw() {
        List<StageSample> samples = List.of(new StageSample(10, List.of(3, 0, 2)));

        assertThatThrownBy(() -> StageFrequency.fit(Spread.CONSTANT, samples))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("stage 1 is in no sample");
    }
}
