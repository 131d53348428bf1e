package org.moultwright.compute.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.stage.TruncatedNormal.Bound;

class CohortLawTest {
    private static final PassingLaw BEFORE = new PassingLaw(Math.log(40), 0.06, 0.02, 0);
    private static final PassingLaw HERE = new PassingLaw(Math.log(66), 0.06, 0.03, 0);
    private static final double NOW = 55;

    @Test
    void halfANormalDistributionHasItsPublishedMeanAndVariance() {
        // Half-normal distribution (Johnson, Kotz & Balakrishnan 1994, 13.10.1): mean √(2/π), variance 1 − 2/π.
        TruncatedNormal upper = TruncatedNormal.between(Bound.at(0), Bound.NONE);
        assertThat(upper.mean()).isCloseTo(Math.sqrt(2 / Math.PI), within(1e-6));
        assertThat(upper.variance()).isCloseTo(1 - 2 / Math.PI, within(1e-6));
        assertThat(TruncatedNormal.between(Bound.at(Double.NEGATIVE_INFINITY), Bound.NONE))
                .isEqualTo(new TruncatedNormal(0, 1));
    }

    @Test
    void withoutCorrelationTheBoundaryBeforeTellsNothing() {
        for (double share : new double[] {0.02, 0.5, 0.95}) {
            double byLaw = HERE.ageAtSurvival(HERE.survival(NOW) * (1 - share));
            assertThat(cohort(asExpected(), 0, 0).ageAt(share)).isCloseTo(byLaw, within(0.03));
        }
    }

    @Test
    void aTrayThatPassedAsExpectedWillPassAsExpected() {
        for (double share : new double[] {0.05, 0.5, 0.95}) {
            double byLaw = HERE.ageAtSurvival(HERE.survival(NOW) * (1 - share));
            assertThat(cohort(asExpected(), 0, 0.85).ageAt(share)).isCloseTo(byLaw, within(0.5));
        }
    }

    @Test
    void stragglersAtTheBoundaryBeforePutOffTheLastHereButNotTheHalf() {
        double[] late = asExpected();
        double moved = 0;
        for (int i = 0; i < 4; i++) {
            moved += 0.15 * late[i];
            late[i] *= 0.85;
        }
        CohortLaw usual = cohort(asExpected(), 0, 0.85);
        CohortLaw straggling = cohort(late, moved, 0.85);
        assertThat(straggling.ageAt(0.95)).isGreaterThan(usual.ageAt(0.95) + 1);
        assertThat(straggling.ageAt(0.4)).isCloseTo(usual.ageAt(0.4), within(0.7));
    }

    @Test
    void anAgeIsNeverBeforeTheLastLook() {
        CohortLaw cohort = cohort(asExpected(), 0, 0.85);
        assertThat(cohort.ageAt(0)).isGreaterThanOrEqualTo(NOW - 1e-9);
        assertThat(cohort.ageAt(0.3)).isLessThan(cohort.ageAt(0.31));
    }

    private static double[] asExpected() {
        double[] passed = new double[10];
        for (int i = 0; i < passed.length; i++) {
            passed[i] = 60 * (BEFORE.survival(from(i)) - BEFORE.survival(from(i + 1)));
        }
        return passed;
    }

    /** Looks every two warm-days from 34 on, the first interval reaching back to laying. */
    private static double from(int look) {
        return look == 0 ? 0 : 32 + 2.0 * look;
    }

    private static CohortLaw cohort(double[] passedBetween, double late, double correlation) {
        List<PassingState> states = new ArrayList<>();
        double passed = 0;
        double all = late;
        for (double between : passedBetween) {
            all += between;
        }
        states.add(new PassingState(0, 0, all));
        for (int i = 0; i < passedBetween.length; i++) {
            passed += passedBetween[i];
            states.add(new PassingState(from(i + 1), passed, all - passed));
        }
        BoundaryEvidence before = new BoundaryEvidence(states, List.of(), List.of(), OptionalDouble.empty());
        return new CohortLaw(PassedBefore.of(before), BEFORE, (int) Math.round(late), HERE, correlation, NOW);
    }
}
