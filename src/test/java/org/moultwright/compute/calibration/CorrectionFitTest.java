package org.moultwright.compute.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.CalibrationMethod;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Correction;

class CorrectionFitTest {

    @Test
    void anIcePointTellsTheOffsetAndLeavesTheSlopeUnsure() {
        Correction found = CorrectionFit.through(CalibrationMethod.ICE_POINT, List.of(KnownPoints.ice(0.31, 0.02)));

        assertThat(found.correct(0.31)).isZero();
        assertThat(found.correct(27.31)).isCloseTo(27, within(1e-12));
        assertThat(found.sdAt(0.31)).isCloseTo(Math.hypot(0.05, 0.02), within(1e-12));
        assertThat(found.sdAt(27.31)).isCloseTo(Math.sqrt(0.05 * 0.05 + 0.02 * 0.02 + 0.108 * 0.108), within(1e-12));
    }

    @Test
    void twoPointsAreMetExactlyAndEachAsSureAsItWas() {
        CalibrationPoint low = new CalibrationPoint(0, 0.05, 0.3, 0.01, "melting ice");
        CalibrationPoint high = new CalibrationPoint(37, 0.1, 36.8, 0.02, "clinical thermometer");
        Correction found = CorrectionFit.through(CalibrationMethod.TWO_POINTS, List.of(low, high));

        assertThat(found.correct(0.3)).isCloseTo(0, within(1e-12));
        assertThat(found.correct(36.8)).isCloseTo(37, within(1e-12));
        assertThat(found.sdAt(0.3)).isCloseTo(Math.hypot(0.05, 0.01), within(1e-12));
        assertThat(found.sdAt(36.8)).isCloseTo(Math.hypot(0.1, 0.02), within(1e-12));
    }

    @Test
    void wrongNumbersOfPointsAndPointsTooNearAreRefused() {
        CalibrationPoint ice = KnownPoints.ice(0.1, 0.02);
        CalibrationPoint near = new CalibrationPoint(3, 0.1, 3.2, 0.02, "cold water");

        assertThatIllegalArgumentException()
                .isThrownBy(() -> CorrectionFit.through(CalibrationMethod.ICE_POINT, List.of(ice, near)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CorrectionFit.through(CalibrationMethod.TWO_POINTS, List.of(ice, near)))
                .withMessageContaining("at least 4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CorrectionFit.through(CalibrationMethod.SATURATED_SALTS, List.of()));
    }

    @Test
    void theStatedUncertaintyCoversTheTruthAsOftenAsItShould() {
        int covered = 0;
        int tries = 4000;
        for (int seed = 0; seed < tries; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double offset = random.nextGaussian();
            double slope = 0.01 * random.nextGaussian();
            List<CalibrationPoint> points = IntStream.range(0, 8)
                    .mapToObj(i -> {
                        double reference = 5 * i;
                        double indicated = reference + offset + slope * reference + 0.1 * random.nextGaussian();
                        return new CalibrationPoint(reference, 0, indicated, 0, "bath");
                    })
                    .toList();
            Correction found = CorrectionFit.through(CalibrationMethod.LEAST_SQUARES, points);
            double indicatedAt27 = 27 + offset + slope * 27;
            // Student's t with 6 degrees of freedom holds 95 % within 2.447.
            double reach = 2.447 * found.sdAt(indicatedAt27);
            covered += Math.abs(found.correct(indicatedAt27) - 27) <= reach ? 1 : 0;
        }
        // Four standard errors of a share of .95 out of 4000.
        assertThat(covered / (double) tries).isBetween(0.936, 0.964);
    }

    @Test
    void theReferencesOwnUncertaintyIsNotAveragedAway() {
        List<CalibrationPoint> points = IntStream.range(0, 12)
                .mapToObj(i -> new CalibrationPoint(3 * i, 0.2, 3 * i + 0.5, 0, "thermometer"))
                .toList();

        assertThat(CorrectionFit.through(CalibrationMethod.LEAST_SQUARES, points)
                        .sdAt(27))
                .isCloseTo(0.2, within(1e-9));
    }

    @Test
    void aDigitNeverSeenToMoveIsStillNoSurerThanItsStep() {
        List<CalibrationPoint> points = List.of(
                new CalibrationPoint(10, 0, 10, 0.3, "bath"),
                new CalibrationPoint(20, 0, 20, 0.3, "bath"),
                new CalibrationPoint(30, 0, 30, 0.3, "bath"));

        assertThat(CorrectionFit.through(CalibrationMethod.LEAST_SQUARES, points)
                        .sdAt(20))
                .isCloseTo(0.3 / Math.sqrt(3), within(1e-9));
    }
}
