package org.moultwright.compute.mould;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.mould.MouldExposure.Comparison;
import org.moultwright.domain.Correction;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;

class MouldExposureTest {
    private static final Instant START = Instant.parse("2026-03-01T00:00:00Z");
    private static final Instant END = START.plus(Duration.ofDays(7));
    private static final Correction EXACT = Correction.constant(0, 0);
    private static final Correction WITHIN_TWO_PERCENT = Correction.constant(0, 1);

    @Test
    void aWeekOfSteadyAirIsThatClimatesIndex() {
        MouldExposure exposure = exposure(week(95, 168), EXACT);

        double direct = MouldIndex.NONE.after(new MouldClimate(27, 95), 7).value();
        assertThat(exposure.likely().value()).isCloseTo(direct, within(1e-3));
        assertThat(exposure.measuredShare()).isCloseTo(1, within(1e-9));
        assertThat(exposure.least()).isEqualTo(exposure.most());
    }

    @Test
    void weeksAreToldApartOnlyBeyondWhatTheProbeCanTell() {
        MouldExposure damp = exposure(week(88, 168), WITHIN_TWO_PERCENT);
        MouldExposure hardlyDamper = exposure(week(90, 168), WITHIN_TWO_PERCENT);
        MouldExposure wet = exposure(week(97, 168), WITHIN_TWO_PERCENT);

        assertThat(hardlyDamper.against(damp)).isEqualTo(Comparison.ALIKE);
        assertThat(wet.against(damp)).isEqualTo(Comparison.WETTER);
        assertThat(damp.against(wet)).isEqualTo(Comparison.DRIER);
    }

    @Test
    void aWeekHardlyMeasuredIsNotCompared() {
        MouldExposure measured = exposure(week(97, 168), EXACT);
        MouldExposure hardly = exposure(week(97, 60), EXACT);

        assertThat(hardly.measuredShare()).isCloseTo(60 / 168.0, within(1e-9));
        assertThat(hardly.against(measured)).isEqualTo(Comparison.CANNOT_TELL);
        assertThat(exposure(ReadingSeries.EMPTY, EXACT).measuredShare()).isZero();
    }

    private static MouldExposure exposure(ReadingSeries raw, Correction humidity) {
        return MouldExposure.over(raw, START, END, EXACT, humidity, 2);
    }

    private static ReadingSeries week(double percent, int hours) {
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        for (int hour = 0; hour < hours; hour++) {
            series.add(START.plus(Duration.ofHours(hour)).toEpochMilli(), 27, percent, Quality.GOOD);
        }
        return series.build();
    }
}
