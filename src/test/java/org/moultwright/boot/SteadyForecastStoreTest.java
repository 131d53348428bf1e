package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.Composition;
import org.moultwright.compute.forecast.CountInterval;
import org.moultwright.compute.forecast.ForecastQuestion;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.compute.forecast.PastBroods;
import org.moultwright.domain.BroodRecord;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.Room;

/** What is expected of the demo room's trays: news change it, the clock alone hardly does. */
class SteadyForecastStoreTest {
    private static final long SEED = 20_260_101;

    /** Counts are shown whole: an interval that moved by no more than this moved by a rounding. */
    private static final double A_ROUNDING = 1;

    @TempDir
    Path folder;

    private final Forecaster forecaster = new Forecaster(TimingsFile.shipped());

    @ParameterizedTest
    @ValueSource(strings = {"2026-05-03T19:41:00Z", "2026-04-28T19:41:07Z"})
    void withinAnHourTheSameEvidenceGivesTheSameIntervals(Instant evening) {
        try (H2Store store = demo(evening)) {
            List<BroodForecast> first = forecastsOfANewDesk(store, evening);
            assertThat(first).isNotEmpty();
            assertThat(forecastsOfANewDesk(store, evening.plusSeconds(60))).isEqualTo(first);
            assertThat(forecastsOfANewDesk(
                            store, Instant.parse(evening.toString().substring(0, 13) + ":59:59Z")))
                    .isEqualTo(first);
        }
    }

    @Test
    void aMinuteMovesAnIntervalByARoundingAtMost() {
        for (String evening : List.of("2026-04-05T19:44:00Z", "2026-04-28T19:56:00Z", "2026-05-03T19:41:00Z")) {
            Instant from = Instant.parse(evening);
            try (H2Store store = demo(from)) {
                assertThat(room(store).at(from).broods().stream()
                                .mapToInt(brood -> hold(brood.record(), from))
                                .sum())
                        .as("intervals on %s", from)
                        .isPositive();
            }
        }
    }

    /** How many intervals of a brood were held. */
    private int hold(BroodRecord record, Instant from) {
        List<CountInterval> before = intervals(record, from);
        for (int minute = 1; minute <= 6; minute++) {
            List<CountInterval> after = intervals(record, from.plus(Duration.ofMinutes(minute)));
            assertThat(after).hasSameSizeAs(before);
            for (int i = 0; i < after.size(); i++) {
                String which = record.brood().code() + ", " + minute + " minutes after " + from;
                assertThat(after.get(i).p10()).as(which).isCloseTo(before.get(i).p10(), within(A_ROUNDING));
                assertThat(after.get(i).p90()).as(which).isCloseTo(before.get(i).p90(), within(A_ROUNDING));
            }
            before = after;
        }
        return before.size();
    }

    /** What each tray may hold tonight and three days on, stage by stage. */
    private List<CountInterval> intervals(BroodRecord record, Instant asOf) {
        List<Instant> days = List.of(asOf, asOf.plus(Duration.ofDays(3)));
        BroodForecast forecast = forecaster.forecast(new ForecastQuestion(record, asOf, PastBroods.NONE, SEED, days));
        List<CountInterval> intervals = new ArrayList<>();
        forecast.trays().stream()
                .flatMap(tray -> tray.compositions().stream())
                .map(Composition::byStage)
                .forEach(byStage -> record.brood().stages().stream()
                        .filter(byStage::containsKey)
                        .forEach(stage -> intervals.add(byStage.get(stage))));
        return intervals;
    }

    private List<BroodForecast> forecastsOfANewDesk(H2Store store, Instant now) {
        return room(store).at(now).broods().stream()
                .flatMap(brood -> brood.forecast().stream())
                .toList();
    }

    private Room room(H2Store store) {
        return new Room(store.book(), store.readings(), forecaster::forecast);
    }

    private H2Store demo(Instant evening) {
        H2Store store = H2Store.open(folder.resolve(evening.getEpochSecond() + ".store"));
        DemoRoom.fill(store, evening);
        return store;
    }
}
