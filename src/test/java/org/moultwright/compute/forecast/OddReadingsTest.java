package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.stage.Chance;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.exchange.TimingsFile;

/** Readings as they come, and clocks as they are set: the same truth gives the same dates. */
class OddReadingsTest {
    private final Chance chance = new Chance(20_261_125);
    private final SimulatedBrood simulated = SimulatedBrood.of("R", SimulatedHusbandry.of(chance), 1, chance);
    private final BroodRecord brood = simulated.record();

    @Test
    void readingsOutOfOrderAreTheSameReadings() {
        List<Reading> turned = readings();
        Collections.shuffle(turned, new Random(1));
        assertThat(forecast(brood.withReadings(Map.of("probe", series(turned)))))
                .isEqualTo(forecast(brood));
    }

    @Test
    void readingsGivenTwiceAreTheSameReadings() {
        List<Reading> twice = readings();
        twice.addAll(readings());
        assertThat(forecast(brood.withReadings(Map.of("probe", series(twice))))).isEqualTo(forecast(brood));
    }

    @Test
    void aProbeThatStoodElsewhereTellsNothing() {
        assertThat(forecast(brood.withReadings(Map.of("another", series(readings())))))
                .isEqualTo(forecast(brood.withReadings(Map.of())));
    }

    @Test
    void withoutReadingsTheSetPointStandsInAndSaysSo() {
        assertThat(forecast(brood.withReadings(Map.of())).notes())
                .extracting(ForecastNote::kind)
                .contains(ForecastNote.Kind.SET_POINT_STANDS_IN, ForecastNote.Kind.GAPS_FILLED);
    }

    @Test
    void whatCannotBeIsLeftOut() {
        ReadingSeries.Builder odd = new ReadingSeries.Builder();
        for (Reading reading : readings()) {
            odd.add(reading);
            odd.add(reading.takenAt().plusSeconds(60).toEpochMilli(), 850, Double.NaN, Quality.GOOD);
        }
        assertThat(forecast(brood.withReadings(Map.of("probe", odd.build())))).isEqualTo(forecast(brood));
    }

    @Test
    void tooColdForAnyDevelopmentIsSaidToBe() {
        ReadingSeries.Builder cold = new ReadingSeries.Builder();
        readings().forEach(reading -> cold.add(reading.takenAt().toEpochMilli(), 4, Double.NaN, Quality.GOOD));
        BroodForecast forecast = forecast(brood.withReadings(Map.of("probe", cold.build())));
        assertThat(forecast.notes()).extracting(ForecastNote::kind).contains(ForecastNote.Kind.HARDLY_DEVELOPS);
        assertThat(forecast(brood).notes())
                .extracting(ForecastNote::kind)
                .doesNotContain(ForecastNote.Kind.HARDLY_DEVELOPS);
    }

    @Test
    void aBroodTakenToAnotherZoneKeepsItsDates() {
        assertThat(forecast(in("Pacific/Auckland"))).isEqualTo(forecast(brood));
    }

    @Test
    void clocksPutForwardMoveNoDate() {
        // Lisbon went over to summer time on 29 March 2026, within these checks.
        assertThat(forecast(in("Europe/Lisbon"))).isEqualTo(forecast(brood));
    }

    private BroodRecord in(String zone) {
        Brood old = brood.brood();
        Brood moved = new Brood(
                old.code(),
                old.taxon(),
                ZoneId.of(zone),
                old.laid(),
                old.pulled(),
                old.stages(),
                old.referenceTemperatureCelsius(),
                old.timing());
        return new BroodRecord(
                moved,
                brood.ledger(),
                brood.checks(),
                brood.stays(),
                brood.probeStays(),
                brood.setPoints(),
                brood.readings(),
                brood.mould(),
                brood.care(),
                brood.pots(),
                brood.runUp());
    }

    private List<Reading> readings() {
        List<Reading> readings = new ArrayList<>();
        brood.readings().values().forEach(series -> series.forEach(readings::add));
        return readings;
    }

    private static ReadingSeries series(List<Reading> readings) {
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        readings.forEach(series::add);
        return series.build();
    }

    private BroodForecast forecast(BroodRecord record) {
        return new Forecaster(TimingsFile.shipped())
                .forecast(new ForecastQuestion(record, simulated.asOf(0.6), PastBroods.NONE, 7, List.of()));
    }
}
