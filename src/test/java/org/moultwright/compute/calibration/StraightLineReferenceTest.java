package org.moultwright.compute.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.CalibrationMethod;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Correction;

/** Against JCGM 100:2008 (GUM), H.3, the calibration of a thermometer, table H.6 and its results. */
class StraightLineReferenceTest {
    private static final double[] READING = {
        21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };
    private static final double[] CORRECTION = {
        -.171, -.169, -.166, -.159, -.164, -.165, -.156, -.157, -.159, -.161, -.160
    };
    private static final StraightLine LINE = StraightLine.through(READING, CORRECTION, 20, 0);

    @Test
    void theLineIsThePublishedOne() {
        assertThat(LINE.intercept()).isCloseTo(-0.1712, within(5e-5));
        assertThat(Math.sqrt(LINE.interceptVariance())).isCloseTo(0.0029, within(5e-5));
        assertThat(LINE.slope()).isCloseTo(0.00218, within(5e-6));
        assertThat(Math.sqrt(LINE.slopeVariance())).isCloseTo(0.00067, within(5e-6));
        assertThat(LINE.correlation()).isCloseTo(-0.930, within(5e-4));
        assertThat(LINE.residualSd()).isCloseTo(0.0035, within(5e-5));
    }

    @Test
    void theCorrectionAtThirtyDegreesIsThePublishedOneAndNeedsTheCovariance() {
        Correction fitted = new Correction(
                LINE.origin(),
                LINE.intercept(),
                LINE.slope(),
                LINE.interceptVariance(),
                LINE.slopeVariance(),
                LINE.covariance(),
                0);
        Correction uncorrelated = new Correction(
                LINE.origin(), LINE.intercept(), LINE.slope(), LINE.interceptVariance(), LINE.slopeVariance(), 0, 0);

        assertThat(fitted.at(30)).isCloseTo(-0.1494, within(5e-5));
        assertThat(fitted.sdAt(30)).isCloseTo(0.0041, within(5e-5));
        // Without the correlation the uncertainty comes out as 0.0073, which is wrong.
        assertThat(uncorrelated.sdAt(30)).isCloseTo(0.0073, within(5e-5));
    }

    @Test
    void aCalibrationOfThePointsSaysTheSameWhereverItsLineIsCentred() {
        List<CalibrationPoint> points = IntStream.range(0, READING.length)
                .mapToObj(i -> new CalibrationPoint(READING[i] + CORRECTION[i], 0, READING[i], 0, "reference"))
                .toList();
        Correction fitted = CorrectionFit.through(CalibrationMethod.LEAST_SQUARES, points);

        assertThat(fitted.origin()).isCloseTo(Arrays.stream(READING).average().orElseThrow(), within(1e-12));
        assertThat(fitted.covariance()).isCloseTo(0, within(1e-12));
        assertThat(fitted.at(30)).isCloseTo(-0.1494, within(5e-5));
        assertThat(fitted.sdAt(30)).isCloseTo(0.0041, within(5e-5));
        assertThat(fitted.sdAt(20)).isCloseTo(0.0029, within(5e-5));
    }

    @Test
    void pointsOfOneIndicationOrFewerThanThreeAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StraightLine.through(new double[] {1, 2}, new double[] {0, 0}, 0, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StraightLine.through(new double[] {2, 2, 2}, new double[] {0, 1, 0}, 0, 0));
    }
}
