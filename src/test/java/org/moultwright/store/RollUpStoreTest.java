package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RollUpLevel;
import org.moultwright.domain.RollUps;
import org.moultwright.store.file.ExactFilePath;
import org.moultwright.workflow.ReadingLog;
import org.moultwright.workflow.ReadingLog.Logged;

/** However readings came in, the roll-ups of any window are those of the readings. */
class RollUpStoreTest {
    private static final String PROBE = "P-1";
    private static final Instant START = Instant.parse("2026-03-01T20:50:00Z");
    private static final Duration LENGTH = Duration.ofDays(12);

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void liveLateOutOfOrderTwiceAndTakenInTheyComeToTheReadings(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        try (H2Store store = H2Store.open(folder.resolve("room.store"))) {
            Instant live = START;
            for (int step = 0; step < 120; step++) {
                List<Logged> batch = new ArrayList<>();
                for (int i = random.nextInt(40); i >= 0; i--) {
                    live = live.plusMillis(random.nextInt(300_000));
                    boolean isLate = random.nextInt(12) == 0;
                    batch.add(new Logged(reading(random, isLate ? anyTime(random) : live), "t"));
                }
                store.readings().append(PROBE, batch);
                store.readings().append(PROBE, batch.subList(0, random.nextInt(batch.size() + 1)));
                if (step % 40 == 7) {
                    takeInSome(store, random);
                }
            }
            requireSame(store, random);
            assertThat(store.check().problems()).isEmpty();
        }
    }

    @Test
    void aStoreWithoutThemIsRolledUpWhenItIsOpened() throws SQLException {
        Path file = folder.resolve("room.store");
        SplittableRandom random = new SplittableRandom(5);
        try (H2Store store = H2Store.open(file)) {
            takeInSome(store, random);
            store.readings().append(PROBE, List.of(new Logged(reading(random, START.plus(LENGTH)), "")));
        }
        run(file, "delete from roll_up");
        try (H2Store store = H2Store.open(file)) {
            assertThat(store.check().problems()).isEmpty();
            requireSame(store, random);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "delete from roll_up where minutes = 60",
                "delete from roll_up where minutes = 1440",
                "update roll_up set span_no = span_no + 1000 where minutes = 15",
                "update roll_up set roll_ups = x'01' where minutes = 15"
            })
    void anAuditFindsWhatDoesNotFit(String damage) throws SQLException {
        Path file = folder.resolve("room.store");
        try (H2Store store = H2Store.open(file)) {
            takeInSome(store, new SplittableRandom(6));
        }
        run(file, damage);
        try (H2Store store = H2Store.open(file)) {
            if (damage.contains("span_no")) {
                assertThat(store.readings().rollUps(PROBE, RollUpLevel.QUARTER_HOUR, START, START.plus(LENGTH)))
                        .isEmpty();
            } else {
                assertThat(store.check().problems())
                        .extracting(problem -> problem.table())
                        .contains("roll_up");
            }
        }
    }

    private static void takeInSome(H2Store store, SplittableRandom random) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            readings.add(reading(random, anyTime(random)));
        }
        store.book()
                .takeIn(
                        BroodRecord.of(InventedBrood.brood("BB-26-A")),
                        sink -> readings.forEach(reading -> sink.accept(PROBE, reading)));
    }

    private static void requireSame(H2Store store, SplittableRandom random) {
        ReadingLog log = store.readings();
        ReadingSeries all = log.series(PROBE, Instant.MIN, Instant.MAX);
        assertThat(log.earliest(PROBE)).contains(Instant.ofEpochMilli(all.epochMillis(0)));
        for (RollUpLevel level : RollUpLevel.values()) {
            assertThat(log.rollUps(PROBE, level, Instant.MIN, Instant.MAX)).isEqualTo(RollUps.of(all, level));
            for (int window = 0; window < 25; window++) {
                Instant from = anyTime(random);
                Instant to = from.plusMillis(1 + random.nextLong(window % 2 == 0 ? 400_000_000 : 4_000_000));
                Instant first = Instant.ofEpochMilli(level.startMillis(from.toEpochMilli()));
                Instant end = Instant.ofEpochMilli(level.startMillis(to.toEpochMilli() - 1) + level.millis());
                assertThat(log.rollUps(PROBE, level, from, to))
                        .as("%s, %s to %s", level, from, to)
                        .isEqualTo(RollUps.of(all.between(first, end), level));
            }
        }
    }

    private static Instant anyTime(SplittableRandom random) {
        return START.plusMillis(random.nextLong(LENGTH.toMillis()));
    }

    private static Reading reading(SplittableRandom random, Instant at) {
        Quality quality = random.nextInt(6) > 0 ? Quality.GOOD : Quality.values()[random.nextInt(3)];
        return new Reading(at, random.nextInt(2000, 3000) / 100.0, Double.NaN, quality);
    }

    private static void run(Path file, String statement) throws SQLException {
        try (Connection connection =
                        DriverManager.getConnection("jdbc:h2:" + ExactFilePath.databaseName(file), "moultwright", "");
                Statement sql = connection.createStatement()) {
            sql.execute(statement);
        }
    }
}
