package org.moultwright.compute.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.compute.Fixture;

/**
 * The leukaemia data of Miller 1981, Survival Analysis, known to R as survival::aml (typed from memory; that
 * all sixteen survivals agree shows it is the same), against kaplan-meier.csv beside this test.
 */
class KaplanMeierReferenceTest {
    private static final Fixture R = Fixture.at("survival/kaplan-meier.csv");
    private static final KaplanMeier MAINTAINED = KaplanMeier.of(lifetimes("9 13 13+ 18 23 28+ 31 34 45+ 48 161+"));
    private static final KaplanMeier NOT_MAINTAINED = KaplanMeier.of(lifetimes("5 5 8 8 12 16+ 23 27 30 33 43 45"));

    @Test
    void survivalAndGreenwoodErrorsAgree() {
        assertAgrees(MAINTAINED, 1);
        assertAgrees(NOT_MAINTAINED, 8);
    }

    @Test
    void mediansAgree() {
        assertThat(MAINTAINED.median()).hasValue(R.value("km.aml", "median[1]"));
        assertThat(NOT_MAINTAINED.median()).hasValue(R.value("km.aml", "median[2]"));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void limitsOfTheLungDataAgree(int i) {
        double survival = R.value("km.lung", "surv100_365_700[" + i + "]");
        double standardError = R.value("km.lung", "se100_365_700[" + i + "]");
        SurvivalLimits logLog = SurvivalLimits.logLog(survival, standardError, 0.95);

        assertThat(logLog.lower()).isCloseTo(R.value("km.lung", "lower(loglog)[" + i + "]"), within(1e-9));
        assertThat(logLog.upper()).isCloseTo(R.value("km.lung", "upper(loglog)[" + i + "]"), within(1e-9));
        assertThat(SurvivalLimits.log(survival, standardError, 0.95).lower())
                .isCloseTo(R.value("km.lung", "lower100_365_700(log)[" + i + "]"), within(1e-9));
    }

    @Test
    void plainLimitsStayBetweenNoneAndAll() {
        assertThat(SurvivalLimits.plain(0.5, 0.1, 0.95).lower()).isCloseTo(0.5 - 0.1959963985, within(1e-9));
        assertThat(SurvivalLimits.plain(0.95, 0.1, 0.95).upper()).isEqualTo(1);
        assertThat(SurvivalLimits.plain(0.05, 0.1, 0.95).lower()).isZero();
    }

    @Test
    void survivalIsReadOffBetweenTheSteps() {
        assertThat(MAINTAINED.survivalAt(0)).isEqualTo(1);
        assertThat(MAINTAINED.survivalAt(9)).isCloseTo(10.0 / 11, within(1e-15));
        assertThat(NOT_MAINTAINED.survivalAt(1000)).isZero();
        assertThat(KaplanMeier.of(List.of()).survivalAt(3)).isEqualTo(1);
    }

    private static void assertAgrees(KaplanMeier estimate, int firstRow) {
        int row = firstRow;
        for (SurvivalStep step : estimate.steps()) {
            assertThat(step.survival()).isCloseTo(R.value("km.aml", "surv[" + row + "]"), within(1e-12));
            if (step.survival() > 0) {
                assertThat(step.standardError()).isCloseTo(R.value("km.aml", "stderr[" + row + "]"), within(1e-12));
            } else {
                assertThat(step.standardError()).isNaN();
            }
            row++;
        }
        assertThat(row - firstRow).isEqualTo(firstRow == 1 ? 7 : 9);
    }

    private static List<Lifetime> lifetimes(String written) {
        return Arrays.stream(written.split(" "))
                .map(time -> new Lifetime(Double.parseDouble(time.replace("+", "")), !time.endsWith("+")))
                .toList();
    }
}
