package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.InventedBrood;
import org.moultwright.exchange.TimingsFile;

/** A brood whose tray has no probe at all, only a thermometer that remembers its lowest and highest. */
class ExtremesForecastTest {
    private static final Instant START = Instant.parse("2026-03-01T00:00:00Z");
    private static final int DAYS = 12;

    @Test
    void isForetoldWithoutAGapAndSaysWhatItRestsOn() {
        BroodForecast forecast = forecast(26, 28);
        assertThat(forecast.gapFraction()).isZero();
        assertThat(forecast.notes())
                .filteredOn(note -> note.kind() == ForecastNote.Kind.EXTREMES_STAND_IN)
                .singleElement()
                .satisfies(note -> assertThat(note.subject()).isEqualTo("A1"));
        assertThat(forecast.tray("A1").orElseThrow().moults()).isNotEmpty();
    }

    @Test
    void coolerDaysGiveFewerWarmDays() {
        assertThat(forecast(22, 24).warmDays())
                .isLessThan(forecast(26, 28).warmDays())
                .isGreaterThan(0);
    }

    private static BroodForecast forecast(double lowest, double highest) {
        List<Extremes> extremes = new ArrayList<>();
        for (int day = 0; day < DAYS; day++) {
            Instant from = START.plus(Duration.ofDays(day));
            extremes.add(new Extremes("A1", from, from.plus(Duration.ofDays(1)), lowest, highest + day % 2));
        }
        BroodRecord record = InventedBrood.measured("XX-26-A", START, List.of()).withExtremes(extremes);
        Instant now = START.plus(Duration.ofDays(DAYS));
        return new Forecaster(TimingsFile.shipped())
                .forecast(
                        new ForecastQuestion(record, now, PastBroods.NONE, 1, List.of(now.plus(Duration.ofDays(10)))));
    }
}
