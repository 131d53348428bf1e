package org.moultwright.compute.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.mould.MouldClimate;
import org.moultwright.compute.mould.MouldIndex;
import org.moultwright.compute.psychro.MoistAir;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.Span;
import org.moultwright.exchange.TimingsFile;

class ClimateSummaryTest {
    private static final Instant START = Instant.parse("2026-03-01T00:00:00Z");
    private static final int DAYS = 10;

    @Test
    void ofSteadyAirEveryFigureIsThatOfTheAir() {
        ClimateSummary climate = summary(27.3, 0.3, 92);
        assertThat(climate.readings()).isEqualTo(DAYS * 24);
        assertThat(climate.warmDays()).isCloseTo(DAYS, within(1e-9));
        assertThat(climate.temperatureCelsius()).hasValueSatisfying(range -> {
            assertThat(range.lowest()).isCloseTo(27, within(1e-9));
            assertThat(range.mean()).isCloseTo(27, within(1e-9));
            assertThat(range.highest()).isCloseTo(27, within(1e-9));
        });
        assertThat(climate.humidityPercent())
                .hasValueSatisfying(range -> assertThat(range.mean()).isCloseTo(92, within(1e-9)));
        assertThat(climate.dewPointCelsius())
                .hasValueSatisfying(range ->
                        assertThat(range.mean()).isCloseTo(MoistAir.of(27, 92).dewPointCelsius(), within(1e-9)));
        assertThat(climate.mould().value())
                .isPositive()
                .isCloseTo(MouldIndex.NONE.after(new MouldClimate(27, 92), DAYS).value(), within(1e-6));
    }

    @Test
    void withoutHumidityNothingIsSaidOfWater() {
        ClimateSummary climate = summary(27, 0, Double.NaN);
        assertThat(climate.temperatureCelsius()).isPresent();
        assertThat(climate.humidityPercent()).isEmpty();
        assertThat(climate.dewPointCelsius()).isEmpty();
        assertThat(climate.mould()).isEqualTo(MouldIndex.NONE);
    }

    @Test
    void aContainerNothingMeasuredHasNoRangesButItsTime() {
        BroodRecord record = InventedBrood.measured("XX-26-A", START, List.of());
        ClimateSummary climate =
                ClimateSummary.of(record, "A1", START.plus(Duration.ofDays(DAYS)), TimingsFile.shipped());
        assertThat(climate.readings()).isZero();
        assertThat(climate.temperatureCelsius()).isEmpty();
        assertThat(climate.lived().gapFraction()).isEqualTo(1);
        assertThat(climate.warmDays()).isCloseTo(DAYS, within(1e-9));
    }

    @Test
    void ofLowestAndHighestAloneTheRangesAreThose() {
        BroodRecord record = InventedBrood.measured("XX-26-A", START, List.of())
                .withExtremes(List.of(
                        new Extremes("A1", START, day(1), 24, 28, 60, 80),
                        new Extremes("A1", day(1), day(2), 25, 27),
                        new Extremes("B1", day(2), day(3), 10, 40)));
        ClimateSummary climate = ClimateSummary.of(record, "A1", day(4), TimingsFile.shipped());
        assertThat(climate.readings()).isZero();
        assertThat(climate.temperatureCelsius()).contains(new ClimateSummary.Range(24, 26, 28));
        assertThat(climate.humidityPercent()).contains(new ClimateSummary.Range(60, 70, 80));
        assertThat(climate.lived().gapFraction()).isCloseTo(0.5, within(1e-9));
    }

    private static Instant day(int days) {
        return START.plus(Duration.ofDays(days));
    }

    private static ClimateSummary summary(double celsius, double offsetCelsius, double humidityPercent) {
        ProbeStay stay = new ProbeStay("P-1", "A1", new Span(START, Optional.empty()), offsetCelsius, 0.1);
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        for (int hour = 0; hour < DAYS * 24; hour++) {
            series.add(new Reading(START.plus(Duration.ofHours(hour)), celsius, humidityPercent, Quality.GOOD));
        }
        series.add(new Reading(START.plusSeconds(60), 60, 10, Quality.SUSPECT));
        BroodRecord record =
                InventedBrood.measured("XX-26-A", START, List.of(stay)).withReadings(Map.of("P-1", series.build()));
        return ClimateSummary.of(record, "A1", START.plus(Duration.ofDays(DAYS)), TimingsFile.shipped());
    }
}
