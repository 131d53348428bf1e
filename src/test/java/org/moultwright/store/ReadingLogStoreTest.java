package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.workflow.ReadingLog;
import org.moultwright.workflow.ReadingLog.Logged;

class ReadingLogStoreTest {
    private static final Instant START = Instant.parse("2026-03-01T20:50:00Z");

    @TempDir
    Path folder;

    private H2Store store;
    private ReadingLog log;

    @BeforeEach
    void open() {
        store = H2Store.open(folder.resolve("room.store"));
        log = store.readings();
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void readingsInAnyOrderAndAnyBatchesComeBackInOrderOfTime() {
        for (long seed = 1; seed <= 20; seed++) {
            String probe = "P-" + seed;
            ReadingSeries series = SampleRecords.readings(START, 300);
            List<Logged> shuffled = new ArrayList<>();
            series.forEach(reading -> shuffled.add(new Logged(reading, "t=" + reading.temperatureCelsius())));
            Collections.shuffle(shuffled, new Random(seed));
            SplittableRandom random = new SplittableRandom(seed);
            for (int from = 0; from < shuffled.size(); ) {
                int to = Math.min(shuffled.size(), from + 1 + random.nextInt(80));
                log.append(probe, shuffled.subList(from, to));
                from = to;
            }
            assertThat(log.series(probe, Instant.MIN, Instant.MAX))
                    .as("seed %d", seed)
                    .isEqualTo(series);
        }
    }

    @Test
    void aReadingAlreadyKeptStaysAndOneOfTheSameInstantIsKeptAMillisecondLater() {
        for (int hours = 0; hours < 3; hours++) {
            Instant at = START.plus(Duration.ofHours(hours));
            log.append("P-1", List.of(logged(at, 26), logged(at, 27)));
            log.append("P-1", List.of(logged(at, 28)));
        }
        assertThat(log.append("P-1", List.of(logged(START, 29)))).containsExactly(logged(START.plusMillis(3), 29));
        assertThat(log.append("P-1", List.of(logged(START, 28))))
                .as("the very same one is there already")
                .containsExactly(logged(START.plusMillis(2), 28));
        ReadingSeries series = log.series("P-1", START, START.plus(Duration.ofHours(3)));
        assertThat(series.size()).isEqualTo(10);
        assertThat(IntStream.range(0, 4).mapToDouble(series::temperatureCelsius))
                .containsExactly(26.0, 27.0, 28.0, 29.0);
    }

    @Test
    void whateverAClockIsSetToNoReadingTakesAnothersPlace() {
        SplittableRandom random = new SplittableRandom(20260304);
        List<Logged> kept = new ArrayList<>();
        Instant clock = START;
        for (int number = 0; number < 600; number++) {
            boolean isSet = random.nextInt(40) == 0;
            clock = isSet ? START.plusSeconds(random.nextInt(7_300)) : clock.plusSeconds(1);
            kept.addAll(log.append("P-1", List.of(new Logged(reading(clock, 26), "line " + number))));
        }
        assertThat(kept).extracting(Logged::rawLine).doesNotHaveDuplicates().hasSize(600);
        ReadingSeries series = log.series("P-1", Instant.MIN, Instant.MAX);
        assertThat(series.size()).isEqualTo(600);
        kept.forEach(logged -> assertThat(
                        series.reading(series.indexAtOrAfter(logged.reading().takenAt())))
                .isEqualTo(logged.reading()));
        assertThat(log.append("P-1", kept)).as("the same again").isEqualTo(kept);
        assertThat(log.series("P-1", Instant.MIN, Instant.MAX)).isEqualTo(series);
    }

    @Test
    void aSpanIncludesItsStartAndNotItsEnd() {
        for (int minutes = 0; minutes < 180; minutes++) {
            log.append("P-1", List.of(logged(START.plus(Duration.ofMinutes(minutes)), 20 + minutes / 100.0)));
        }
        ReadingSeries series =
                log.series("P-1", START.plus(Duration.ofMinutes(5)), START.plus(Duration.ofMinutes(175)));
        assertThat(series.size()).isEqualTo(170);
        assertThat(series.temperatureCelsius(0)).isEqualTo(20.05);
        assertThat(series.temperatureCelsius(169)).isEqualTo(21.74);
        assertThat(log.series("P-2", Instant.MIN, Instant.MAX)).isEqualTo(ReadingSeries.EMPTY);
    }

    @Test
    void theLatestReadingIsTheLatestInTimeNotTheLastWritten() {
        assertThat(log.latest()).isEmpty();
        log.append("P-1", List.of(logged(START.plus(Duration.ofHours(5)), 26)));
        log.append("P-1", List.of(logged(START, 25)));
        log.append("P-2", List.of(logged(START, 24)));
        assertThat(log.latest()).containsOnlyKeys("P-1", "P-2");
        assertThat(log.latest().get("P-1").temperatureCelsius()).isEqualTo(26);
        assertThat(log.latest().get("P-2").temperatureCelsius()).isEqualTo(24);
    }

    private static Logged logged(Instant at, double temperatureCelsius) {
        return new Logged(reading(at, temperatureCelsius), "");
    }

    private static Reading reading(Instant at, double temperatureCelsius) {
        return new Reading(at, temperatureCelsius, Double.NaN, Quality.GOOD);
    }
}
