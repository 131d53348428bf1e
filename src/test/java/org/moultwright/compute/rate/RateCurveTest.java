package org.moultwright.compute.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.domain.RateForm;

class RateCurveTest {
    static Stream<RateForm> forms() {
        return Stream.of(
                new RateForm.Linear(11),
                new RateForm.Briere1(11, 38),
                new RateForm.Lactin2(0.0165, 42.0240, 2.0503, -1.1906));
    }

    @ParameterizedTest
    @MethodSource("forms")
    void isOneAtItsReferenceTemperature(RateForm form) {
        assertThat(RateCurve.of(form).relativeTo(27).at(27)).isCloseTo(1, within(1e-15));
    }

    @Test
    void refusesAReferenceAtWhichNothingDevelops() {
        RateCurve curve = RateCurve.of(new RateForm.Linear(30));

        assertThatThrownBy(() -> curve.relativeTo(27))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("referenceCelsius is 27.0");
    }
}
