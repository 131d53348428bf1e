package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.climate.LivedTemperature;
import org.moultwright.compute.climate.WarmDays;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.ForecastQuestion;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.Milestone;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.PastBroods;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.compute.history.Story;
import org.moultwright.compute.rate.BelievedRate;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.ui.RoomFixture;

/** A probe that speaks every half minute, thinned: far fewer readings, and the same dates. */
class ThinnedReadingsTest {
    private static final Instant FROM = Instant.parse("2026-02-20T00:00:00Z");
    private static final int SECONDS_APART = 30;
    private static final int A_DAY = 86_400 / SECONDS_APART;
    private static final int DAYS = 73;
    private static final int SEEDS = 24;

    private final BroodRecord written = RoomFixture.broodA().record();

    /**
     * A forecast draws at random, and the least change of a reading makes it draw otherwise. So many seeds are averaged,
     * and what is left may be a quarter of an hour and four standard errors of that average.
     */
    @Test
    void thinningMovesDatesByLessThanAQuarterOfAnHourBesideTheScatterOfTheDraws() {
        ReadingSeries raw = air(number -> false);
        ReadingSeries kept = histories(raw);
        Map<String, List<Double>> moved = new TreeMap<>();
        for (int seed = 1; seed <= SEEDS; seed++) {
            BroodForecast exact = forecast(raw, seed);
            BroodForecast thinned = forecast(kept, seed);
            for (TrayForecast tray : exact.trays()) {
                for (MoultForecast moult : tray.moults()) {
                    MoultForecast after = thinned.tray(tray.tray())
                            .flatMap(found -> found.moult(moult.into()))
                            .orElseThrow();
                    for (Milestone milestone : Milestone.values()) {
                        String which = tray.tray() + " " + moult.into() + " " + milestone;
                        note(moved, which, moult.at(milestone), after.at(milestone));
                    }
                }
            }
        }
        assertThat(moved).isNotEmpty();
        moved.forEach((which, minutes) -> {
            double mean = mean(minutes);
            double variance = mean(
                    minutes.stream().map(each -> (each - mean) * (each - mean)).toList());
            assertThat(mean).as(which).isCloseTo(0.0, within(15 + 4 * Math.sqrt(variance / (SEEDS - 1))));
        });
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    private static void note(
            Map<String, List<Double>> moved, String which, InstantInterval before, InstantInterval after) {
        Map.of(
                        " from", minutes(before.p10(), after.p10()),
                        " middle", minutes(before.p50(), after.p50()),
                        " to", minutes(before.p90(), after.p90()))
                .forEach((end, minutes) -> moved.computeIfAbsent(which + end, unheard -> new ArrayList<>())
                        .add(minutes));
    }

    @Test
    void warmDaysAndGapsAreThoseOfTheReadings() {
        ReadingSeries raw = air(number -> false);
        ReadingSeries thinned = histories(raw);
        assertThat(thinned.size()).isLessThan(raw.size() / 4);
        LivedTemperature exact = lived(raw);
        LivedTemperature told = lived(thinned);
        assertThat(warmDays(told)).isCloseTo(warmDays(exact), within(0.01));
        assertThat(told.gapFraction()).isCloseTo(exact.gapFraction(), within(3e-4));
        assertThat(Story.of(written.withReadings(Map.of("P-1", thinned))))
                .isEqualTo(Story.of(written.withReadings(Map.of("P-1", raw))));
    }

    @Test
    void aProbeThatSpeaksEveryFiveMinutesIsToldAsItWasRead() {
        ReadingSeries sparse = air(number -> number % 10 != 0);
        assertThat(histories(sparse)).isEqualTo(sparse.until(RoomFixture.NOW));
    }

    @Test
    void whatCameLateIsThinnedLikeTheRest() {
        ReadingSeries raw = air(number -> false);
        SeriesLog log = new SeriesLog(raw.until(RoomFixture.NOW.minus(Duration.ofDays(5))));
        ProbeHistories histories = new ProbeHistories(log);
        histories.of(written, RoomFixture.NOW.minus(Duration.ofDays(5)));
        log.readings = raw;
        log.changedFrom = RoomFixture.NOW.minus(Duration.ofDays(40));
        assertThat(histories.of(written, RoomFixture.NOW).get("P-1"))
                .isEqualTo(new ProbeHistories(log).of(written, RoomFixture.NOW).get("P-1"));
        log.changedFrom = RoomFixture.NOW.minus(Duration.ofHours(1));
        assertThat(histories.of(written, RoomFixture.NOW).get("P-1"))
                .isEqualTo(new ProbeHistories(log).of(written, RoomFixture.NOW).get("P-1"));
    }

    private static double minutes(Instant from, Instant to) {
        return Duration.between(from, to).toSeconds() / 60.0;
    }

    private ReadingSeries histories(ReadingSeries raw) {
        return new ProbeHistories(new SeriesLog(raw))
                .of(written, RoomFixture.NOW)
                .get("P-1");
    }

    private BroodForecast forecast(ReadingSeries readings, int seed) {
        return new Forecaster(TimingsFile.shipped())
                .forecast(new ForecastQuestion(
                        written.withReadings(Map.of("P-1", readings)),
                        RoomFixture.NOW,
                        PastBroods.NONE,
                        seed,
                        List.of()));
    }

    private LivedTemperature lived(ReadingSeries readings) {
        return LivedTemperature.of(written.withReadings(Map.of("P-1", readings)), "A1", RoomFixture.NOW);
    }

    private double warmDays(LivedTemperature temperature) {
        return WarmDays.of(temperature, BelievedRate.of(written.brood(), TimingsFile.shipped()))
                .total();
    }

    /** A day's swing, a thermostat's ripple, noise, a lid open twice a day, faults, and a night of silence. */
    private static ReadingSeries air(IntPredicate isLeftOut) {
        Random random = new Random(20260401);
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        for (int i = 0; i < DAYS * A_DAY; i++) {
            double noise = 0.05 * random.nextGaussian();
            double day = (double) i / A_DAY;
            double lid = i % (A_DAY / 2) < 20 ? -3 * Math.exp(-(i % (A_DAY / 2)) / 10.0) : 0;
            double celsius = 26.5 + 0.8 * Math.sin(2 * Math.PI * day) + 0.3 * Math.sin(i / 6.0) + lid + noise;
            boolean isSilent = day > 41.3 && day < 41.7;
            boolean isFault = i % 4001 == 17;
            if (!isSilent && !isLeftOut.test(i)) {
                builder.add(new Reading(
                        FROM.plusSeconds((long) i * SECONDS_APART),
                        isFault ? 85 : Math.round(celsius * 100) / 100.0,
                        70,
                        isFault ? Quality.FAULT : Quality.GOOD));
            }
        }
        return builder.build();
    }

    /** A log that holds one series of every probe. */
    private static final class SeriesLog implements ReadingLog {
        private ReadingSeries readings;
        private Instant changedFrom = Instant.EPOCH;

        SeriesLog(ReadingSeries readings) {
            this.readings = readings;
        }

        @Override
        public List<Logged> append(String probe, List<Logged> added) {
            throw new IllegalStateException("nothing is appended here");
        }

        @Override
        public ReadingSeries series(String probe, Instant from, Instant to) {
            return readings.between(from, to);
        }

        @Override
        public Optional<Instant> earliestSince(String probe, long mark) {
            return Optional.of(changedFrom);
        }

        @Override
        public Map<String, Reading> latest() {
            return Map.of();
        }
    }
}
