package org.moultwright.compute.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.compute.Fixture;

/** Against isoreg.csv beside this test. */
class IsotonicReferenceTest {

    @Test
    void agreesWithIsoreg() {
        Fixture r = Fixture.at("survival/isoreg.csv");
        double[] pooled = Isotonic.increasing(new double[] {1, 4, 3, 5, 5, 4, 9, 8, 10});

        for (int i = 0; i < pooled.length; i++) {
            assertThat(pooled[i]).isCloseTo(r.value("isoreg", "yf[" + (i + 1) + "]"), within(1e-12));
        }
    }

    @Test
    void aWeightOfTwoIsAValueTwice() {
        assertThat(Isotonic.increasing(new double[] {1, 5, 2, 6}, new double[] {1, 2, 1, 1}))
                .containsExactly(new double[] {1, 4, 4, 6}, within(1e-12));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void neverFallsAndKeepsTheSum(long seed) {
        double[] values = new Random(seed).doubles(200, -5, 5).toArray();
        double[] pooled = Isotonic.increasing(values);

        assertThat(pooled).isSorted();
        assertThat(Arrays.stream(pooled).sum()).isCloseTo(Arrays.stream(values).sum(), within(1e-9));
        assertThat(Isotonic.increasing(pooled)).isEqualTo(pooled);
    }
}
