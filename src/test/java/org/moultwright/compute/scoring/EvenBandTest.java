package org.moultwright.compute.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Percentiles of binomial laws, summed exactly in whole fractions, outside the program. */
class EvenBandTest {
    @Test
    void theBandIsThatOfTheBinomialLaw() {
        assertThat(EvenBand.of(1)).isEqualTo(new EvenBand(0, 1));
        assertThat(EvenBand.of(10)).isEqualTo(new EvenBand(0, 3));
        assertThat(EvenBand.of(100)).isEqualTo(new EvenBand(5, 15));
        assertThat(EvenBand.of(1000)).isEqualTo(new EvenBand(85, 116));
    }
}
