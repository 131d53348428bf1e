package org.moultwright.compute.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.moultwright.compute.rate.RateCurvesReferenceTest.CODLING_BRIERE;
import static org.moultwright.compute.rate.RateCurvesReferenceTest.ERIGONIDIUM;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.Fixture;

/** Integrals from rates.csv beside this test: adaptive quadrature of r along a smooth temperature. */
class RampIntegralReferenceTest {
    private static final Fixture RATES = Fixture.at("rate/rates.csv");
    private static final int READINGS_PER_DAY = 2880;

    @Test
    void daysOfASineAgreeWithQuadrature() {
        assertThat(along(sine(25, 3), CODLING_BRIERE, 10)).isCloseTo(tau("D1.sine25pm3.10d.briere1"), within(1e-6));
        assertThat(along(sine(15, 9), CODLING_BRIERE, 10)).isCloseTo(tau("D2.sine15pm9.10d.briere1"), within(1e-6));
        assertThat(along(sine(24, 2), ERIGONIDIUM, 20))
                .isCloseTo(tau("D6.sine24pm2.20d.wang.Erigonidium"), within(1e-6));
    }

    @Test
    void aConstantAndARampAgreeWithQuadrature() {
        assertThat(RampIntegral.of(CODLING_BRIERE, 25, 25, 10)).isCloseTo(tau("D1b.constant25.10d"), within(1e-12));
        assertThat(RampIntegral.of(CODLING_BRIERE, 18, 26, 5))
                .isCloseTo(tau("D3.ramp18to26.5d.briere1"), within(1e-12));
    }

    @Test
    void aSineAcrossAThresholdAgreesWithItsClosedForm() {
        RateCurve linear = RateCurves.linear(1.0 / 150, 10);

        assertThat(along(sine(15, 9), linear, 1)).isCloseTo(tau("D7.closed"), within(1e-6));
        assertThat(DegreeDays.singleSine(6, 24, 10) / 150).isCloseTo(tau("D7.closed"), within(1e-12));
    }

    @Test
    void theDayOnWhichAStageEndsAgreesWithQuadrature() {
        double days = RATES.value("D11.days to tau=1 at 22+3sin.briere1", "days");

        assertThat(along(sine(22, 3), CODLING_BRIERE, days)).isCloseTo(1, within(1e-6));
    }

    @Test
    void aStepAcrossAThresholdKeepsItsBound() {
        for (double threshold = 20; threshold <= 22; threshold += 0.001) {
            double exact = (22 - threshold) * (22 - threshold) / 4 / 48;
            double error = RampIntegral.of(RateCurves.linear(1, threshold), 20, 22, 1.0 / 48) - exact;

            assertThat(Math.abs(error)).isLessThan(0.007 * 2 / 48);
        }
    }

    private static double tau(String name) {
        return RATES.value(name, "tau");
    }

    private static DoubleUnaryOperator sine(double mean, double amplitude) {
        return day -> mean + amplitude * Math.sin(2 * Math.PI * day);
    }

    /** The integral along straight lines between many points of a course of temperature. */
    private static double along(DoubleUnaryOperator celsiusAtDay, RateCurve rate, double days) {
        int steps = (int) Math.ceil(days * READINGS_PER_DAY);
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double start = celsiusAtDay.applyAsDouble(days * i / steps);
            double end = celsiusAtDay.applyAsDouble(days * (i + 1) / steps);
            sum += RampIntegral.of(rate, start, end, days / steps);
        }
        return sum;
    }
}
