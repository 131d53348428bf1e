package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.RollUpLevel;
import org.moultwright.domain.RollUps;
import org.moultwright.exchange.DelimitedReadings;
import org.moultwright.task.Progress;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.TakeInReadings;
import org.moultwright.workflow.UndoDeed;
import org.moultwright.workflow.WriteClimate;

class TakeInReadingsStoreTest {
    private static final Instant NOW = Instant.parse("2026-05-03T19:00:00Z");
    private static final ZoneId UTC = ZoneId.of("UTC");

    private final DelimitedReadings files = new DelimitedReadings();

    @TempDir
    Path folder;

    private H2Store store;

    @BeforeEach
    void open() {
        store = H2Store.open(folder.resolve("room.store"));
        BroodRecord brood = InventedBrood.measured("XX-26-A", NOW.minus(Duration.ofDays(60)), List.of());
        store.book().takeIn(brood, ReadingSource.of(brood));
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void aFileIsReadingsOfAProbeInAContainerAndTwiceChangesNothing() throws IOException {
        Path file = rows(1_000, "");
        TakeInReadings.Result first = takeIn(file, "P-9", "A1", new Going());
        assertThat(first.readings()).isEqualTo(1_000);
        assertThat(first.added()).isEqualTo(1_000);
        assertThat(stays()).singleElement().satisfies(stay -> {
            assertThat(stay.container()).isEqualTo("A1");
            assertThat(stay.span().from()).isEqualTo("2026-04-01T00:00:00Z");
            assertThat(stay.span().to()).contains(Instant.parse("2026-04-01T16:39:00.001Z"));
        });
        long deeds = store.book().latestDeeds(9).size();
        TakeInReadings.Result again = takeIn(file, "P-9", "A1", new Going());
        assertThat(again.readings()).isEqualTo(1_000);
        assertThat(again.added()).isZero();
        assertThat(stays()).hasSize(1);
        assertThat(store.book().latestDeeds(9)).hasSize((int) deeds);
        assertThat(store.check().problems()).isEmpty();
    }

    @Test
    void aLongerFileAddsWhatIsNew() throws IOException {
        takeIn(rows(100, ""), "P-9", "A1", new Going());
        TakeInReadings.Result longer = takeIn(rows(150, ""), "P-9", "A1", new Going());
        assertThat(longer.added()).isEqualTo(50);
        assertThat(stays()).hasSize(2);
        assertThat(stays().get(1).span().from())
                .isEqualTo(stays().get(0).span().to().orElseThrow());
    }

    @Test
    void rowsThatMeanNothingAreListedAndTheOthersKept() throws IOException {
        TakeInReadings.Result result = takeIn(rows(20, "2026-04-01 00:00,ERR\nfooter\n"), "P-9", "A1", new Going());
        assertThat(result.readings()).isEqualTo(20);
        assertThat(result.unused()).isEqualTo(2);
        assertThat(result.listed()).extracting(row -> row.line()).containsExactly(22L, 23L);
    }

    @Test
    void aMappingThatMakesSenseOfTooLittleTakesInNothing() throws IOException {
        Path file = rows(3, "a\nb\nc\nd\n");
        assertThatThrownBy(() -> takeIn(file, "P-9", "A1", new Going()))
                .isInstanceOf(TakeInReadings.NotUnderstood.class)
                .hasMessageContaining("3 rows are readings and 4 are not");
        assertThat(readings("P-9")).isZero();
        assertThat(stays()).isEmpty();
    }

    @Test
    void aProbeThatStoodElsewhereIsNotInTwoPlaces() throws IOException {
        takeIn(rows(10, ""), "P-9", "box 2", new Going());
        assertThatThrownBy(() -> takeIn(rows(20, ""), "P-9", "A1", new Going()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("another code");
        assertThat(readings("P-9")).as("the earlier ones").isEqualTo(10);
    }

    @Test
    void undoneTheReadingsAreTakenOutAndCanBeTakenInAgain() throws IOException {
        Path file = rows(9_000, "");
        takeIn(file, "P-9", "A1", new Going());
        long mark = store.readings().mark();
        undo();
        assertNothingOf("P-9");
        assertThat(store.readings().earliestSince("P-9", mark))
                .as("whoever keeps readings reads them anew")
                .contains(Instant.parse("2026-04-01T00:00:00Z"));
        openAgain();
        assertNothingOf("P-9");
        assertThat(takeIn(file, "P-9", "A1", new Going()).added()).isEqualTo(9_000);
        openAgain();
        assertThat(readings("P-9")).isEqualTo(9_000);
        assertThat(stays()).hasSize(1);
        undo();
        assertNothingOf("P-9");
    }

    @Test
    void undoneWhatWasThereBeforeAndCameSinceStays() throws IOException {
        Instant start = Instant.parse("2026-04-01T00:00:00Z");
        store.readings().append("P-9", logged(start.plusSeconds(120), start.plusSeconds(7_500)));
        TakeInReadings.Result result = takeIn(rows(500, ""), "P-9", "A1", new Going());
        assertThat(result.added()).as("two instants were held").isEqualTo(498);
        store.readings().append("P-9", logged(start.plusSeconds(3_630), start.plusSeconds(86_400)));
        undo();
        List<Instant> left = new ArrayList<>();
        store.readings().series("P-9", Instant.EPOCH, NOW).forEach(reading -> left.add(reading.takenAt()));
        assertThat(left)
                .containsExactly(
                        start.plusSeconds(120),
                        start.plusSeconds(3_630),
                        start.plusSeconds(7_500),
                        start.plusSeconds(86_400));
        assertRollUpsAgree("P-9", 4);
    }

    @Test
    void ofTwoFilesEachTakesOutWhatItBrought() throws IOException {
        takeIn(rows(100, ""), "P-9", "A1", new Going());
        UUID first = store.book().latestDeeds(1).get(0).id();
        takeIn(rows(150, ""), "P-9", "A1", new Going());
        undoing().undo(first);
        assertThat(readings("P-9")).isEqualTo(50);
        assertThat(stays()).hasSize(1);
        assertRollUpsAgree("P-9", 50);
        assertThat(takeIn(rows(150, ""), "P-9", "A1", new Going()).added()).isEqualTo(100);
        undo();
        undo();
        assertNothingOf("P-9");
    }

    @Test
    void aFileWhoseProbeIsPlacedAlreadyIsTakenOutToo() throws IOException {
        takeIn(rows(100, ""), "P-9", "A1", new Going());
        undoing().undo();
        WriteClimate write = new WriteClimate(store.book(), store.climate(), () -> NOW, UUID::randomUUID);
        Instant before = Instant.parse("2026-03-31T00:00:00Z");
        write.keep("A1", new Reading(before, 25, Double.NaN, Quality.GOOD));
        String hand = HandReading.probeIn("A1");
        takeIn(rows(100, ""), hand, "A1", new Going());
        assertThat(readings(hand)).isEqualTo(101);
        undo();
        assertThat(readings(hand)).isEqualTo(1);
        assertThat(stays()).hasSize(1);
        undo();
        assertNothingOf(hand);
    }

    @Test
    void manyRowsTellHowFarTheyAreAndLeaveNothingWhenCancelled() throws IOException {
        Path file = rows(200_000, "");
        Going cancelled = new Going();
        cancelled.until = 0.5;
        assertThatThrownBy(() -> takeIn(file, "P-9", "A1", cancelled)).isInstanceOf(CancellationException.class);
        assertThat(readings("P-9")).isZero();
        assertThat(stays()).isEmpty();
        Going going = new Going();
        assertThat(takeIn(file, "P-9", "A1", going).added()).isEqualTo(200_000);
        assertThat(going.shares).isSorted().hasSizeGreaterThan(20);
        assertThat(going.shares.get(going.shares.size() - 1)).isGreaterThan(0.95);
    }

    private void undo() {
        assertThat(undoing().undo()).isPresent();
    }

    private UndoDeed undoing() {
        return new UndoDeed(store.book(), () -> NOW, UUID::randomUUID);
    }

    private void openAgain() {
        store.close();
        store = H2Store.open(folder.resolve("room.store"));
    }

    private void assertNothingOf(String probe) {
        assertThat(stays()).isEmpty();
        assertThat(readings(probe)).isZero();
        assertThat(store.readings().latest()).doesNotContainKey(probe);
        assertThat(store.readings().earliest(probe)).isEmpty();
        assertRollUpsAgree(probe, 0);
    }

    /** All that a trace, the thinned memory and the audit go by. */
    private void assertRollUpsAgree(String probe, int readings) {
        for (RollUpLevel level : RollUpLevel.values()) {
            assertThat(store.readings().rollUps(probe, level, Instant.EPOCH, NOW))
                    .as(level.name())
                    .isEqualTo(RollUps.of(store.readings().series(probe, Instant.EPOCH, NOW), level));
        }
        assertThat(readings(probe)).isEqualTo(readings);
        assertThat(store.check().problems()).isEmpty();
    }

    private static List<Logged> logged(Instant... instants) {
        return Stream.of(instants)
                .map(at -> new Logged(new Reading(at, 19, 60, Quality.GOOD), "19;60"))
                .toList();
    }

    private TakeInReadings.Result takeIn(Path file, String probe, String container, Progress progress) {
        return new TakeInReadings(
                        files, store.bulkReadings(), store.book(), store.climate(), () -> NOW, UUID::randomUUID)
                .takeIn(file, files.propose(file, UTC), probe, container, progress);
    }

    private List<ProbeStay> stays() {
        return store.climate().placings();
    }

    private int readings(String probe) {
        return store.readings()
                .series(probe, Instant.EPOCH, Instant.parse("2100-01-01T00:00:00Z"))
                .size();
    }

    private Path rows(int count, String end) throws IOException {
        Path file = Files.createTempFile(folder, "rows", ".csv");
        try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file))) {
            out.print("time,temperature\n");
            Instant at = Instant.parse("2026-04-01T00:00:00Z");
            for (int i = 0; i < count; i++) {
                out.print(at.plusSeconds(60L * i) + "," + (2600 + i % 100) / 100.0 + "\n");
            }
            out.print(end);
        }
        return file;
    }

    /** Goes on until told how far. */
    private static final class Going implements Progress {
        private final List<Double> shares = new ArrayList<>();
        private double until = 2;

        @Override
        public void report(double share, String words) {
            shares.add(share);
        }

        @Override
        public boolean isCancelled() {
            return !shares.isEmpty() && shares.get(shares.size() - 1) > until;
        }
    }
}
