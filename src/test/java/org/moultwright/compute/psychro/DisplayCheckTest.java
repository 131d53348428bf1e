package org.moultwright.compute.psychro;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.compute.psychro.DisplayCheck.Uncertainty;
import org.moultwright.compute.psychro.DisplayCheck.Verdict;

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
}
