package org.moultwright.compute.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.moultwright.compute.calibration.Calibrated.day;
import static org.moultwright.compute.calibration.Calibrated.ice;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.Correction;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Quantity;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.Span;

class CalibratedStaysTest {
    private static final ProbeStay WRITTEN =
            new ProbeStay("P1", "box", new Span(day(0), Optional.of(day(100))), 0.1, 0.5);

    @Test
    void whatWasWrittenHoldsUntilACalibrationApplies() {
        List<ProbeStay> stays = new CalibratedStays(List.of(ice("P1", 0.3, 10))).dress(List.of(WRITTEN));

        assertThat(stays).hasSize(3);
        assertThat(stays.get(0)).isEqualTo(WRITTEN.with(new Span(day(0), Optional.of(day(10)))));
        assertThat(stays.get(1).airCelsius(27.3)).isCloseTo(27, within(1e-12));
        assertThat(stays.get(1).span()).isEqualTo(new Span(day(10), Optional.of(day(40))));
        assertThat(stays.get(2).airCelsius(27.3)).isCloseTo(27, within(1e-12));
    }

    @Test
    void anExpiredCalibrationStillCorrectsButIsLessSure() {
        List<ProbeStay> stays = new CalibratedStays(List.of(ice("P1", 0.3, 10))).dress(List.of(WRITTEN));

        assertThat(stays.get(2).sdCelsius()).isCloseTo(Math.hypot(stays.get(1).sdCelsius(), 0.5), within(1e-12));
    }

    @Test
    void aLaterCalibrationThatAppliesFromEarlierOnTakesThePastOver() {
        Calibration first = ice("P1", 0.3, 10);
        Calibration second = ice("P1", -0.2, 5);
        CalibrationHistory history = CalibrationHistory.of(List.of(first, second), "P1", Quantity.TEMPERATURE);

        assertThat(history.inForce(day(4))).isEmpty();
        assertThat(history.inForce(day(5))).contains(second);
        assertThat(history.inForce(day(50))).contains(second);
        assertThat(new CalibratedStays(List.of(second, first))
                        .dress(List.of(WRITTEN))
                        .get(2)
                        .airCelsius(27.3))
                .isCloseTo(27, within(1e-12));
    }

    @Test
    void otherProbesAreLeftAlone() {
        assertThat(new CalibratedStays(List.of(ice("P2", 0.3, 10))).dress(List.of(WRITTEN)))
                .containsExactly(WRITTEN);
    }

    @Test
    void everyInstantOfAStayIsCoveredOnceByTheCalibrationInForce() {
        for (int seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<Calibration> calibrations = new ArrayList<>();
            for (int i = random.nextInt(5); i > 0; i--) {
                calibrations.add(ice("P1", random.nextInt(-5, 6) / 10.0, random.nextInt(90)));
            }
            CalibrationHistory history = CalibrationHistory.of(calibrations, "P1", Quantity.TEMPERATURE);
            List<ProbeStay> stays = new CalibratedStays(calibrations).dress(List.of(WRITTEN));
            for (int hour = 0; hour < 2400; hour += 7) {
                Instant at = day(0).plus(Duration.ofHours(hour));
                List<ProbeStay> around =
                        stays.stream().filter(stay -> stay.span().contains(at)).toList();
                assertThat(around).as("seed %d at %s", seed, at).hasSize(1);
                double expected = history.inForce(at)
                        .map(Calibration::correction)
                        .orElse(WRITTEN.correction())
                        .correct(26);
                assertThat(around.get(0).airCelsius(26)).isEqualTo(expected);
            }
        }
    }

    @Test
    void theAuditTellsWhatACalibrationChangesOfReadingsLongKept() {
        ReadingSeries.Builder raw = new ReadingSeries.Builder();
        for (int i = 0; i < 20; i++) {
            raw.add(day(i).toEpochMilli(), 27, Double.NaN, i == 12 ? Quality.SUSPECT : Quality.GOOD);
        }
        Calibration added = ice("P1", 0.4, 10);
        Redressing change = Redressing.against(List.of(), Correction.constant(-0.1, 0.5), added)
                .add(raw.build())
                .result();

        assertThat(change.readings()).isEqualTo(9);
        assertThat(change.first()).contains(day(10));
        assertThat(change.meanChange()).isCloseTo(-0.3, within(1e-12));
        assertThat(change.largestChange()).isCloseTo(-0.3, within(1e-12));
        assertThat(Redressing.against(List.of(), Correction.constant(0, 0), added)
                        .result()
                        .readings())
                .isZero();
    }
}
