package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.compute.climate.LivedTemperature;
import org.moultwright.compute.climate.WarmDays;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stay;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.TakeInFolders;
import org.moultwright.workflow.UndoDeed;
import org.moultwright.workflow.WatchPlaces;
import org.moultwright.workflow.WriteClimate;

/** What is written at the desk of the climate: for every brood that knows the container, kept, undone, passed on. */
class WrittenClimateStoreTest {
    private static final Instant START = Instant.parse("2026-03-25T18:00:00Z");
    private static final Instant NOW = START.plus(Duration.ofDays(10));
    private static final Extremes FIRST_DAY = new Extremes("box 1", START, day(1), 24, 28, 60, 75);

    @TempDir
    Path folder;

    private Path file;
    private H2Store store;

    @BeforeEach
    void open() {
        file = folder.resolve("room.store");
        store = H2Store.open(file);
        store.book().takeIn(brood("XX-26-A", "box 1"), ReadingSource.of(brood("XX-26-A", "box 1")));
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void aLowestAndHighestCountForEveryBroodThatKnowsTheContainerAlsoOneThatComesLater() {
        write().keep(FIRST_DAY);
        takeIn(brood("XX-26-B", "box 1"));
        takeIn(brood("XX-26-C", "box 2"));
        reopen();
        assertThat(find("XX-26-A").extremes()).containsExactly(FIRST_DAY);
        assertThat(find("XX-26-B").extremes()).containsExactly(FIRST_DAY);
        assertThat(find("XX-26-C").extremes()).isEmpty();
        WarmDays lived = WarmDays.of(LivedTemperature.of(find("XX-26-A"), "A1", day(1)), celsius -> celsius);
        assertThat(lived.between(START, day(1))).isCloseTo(26, within(1e-9));
    }

    @Test
    void oneOfTheSameSpanWrittenLaterTakesItsPlaceAndUndoGivesItBack() {
        write().keep(FIRST_DAY);
        Extremes corrected = new Extremes("box 1", START, day(1), 22, 28);
        assertThat(write().replacedBy(corrected)).contains(FIRST_DAY);
        write().keep(corrected);
        assertThat(find("XX-26-A").extremes()).containsExactly(corrected);
        assertThat(meanOfFirstDay()).isCloseTo(25, within(1e-9));
        undo();
        assertThat(meanOfFirstDay()).isCloseTo(26, within(1e-9));
        undo();
        assertThat(find("XX-26-A").extremes()).isEmpty();
        assertThat(store.check().problems()).isEmpty();
    }

    @Test
    void aDayReadTwiceCountsAsItWasReadLastAndAWeekReplacesNone() {
        Extremes untilNoon = new Extremes("box 1", START, START.plusSeconds(43_200), 2.6, 27);
        Extremes aMinuteLater = new Extremes("box 1", START, START.plusSeconds(43_260), 26, 27);
        Extremes week = new Extremes("box 1", START, day(7), 25, 28);
        write().keep(untilNoon);
        assertThat(write().replacedBy(aMinuteLater)).contains(untilNoon);
        write().keep(aMinuteLater);
        write().keep(week);
        assertThat(find("XX-26-A").extremes()).containsExactly(aMinuteLater, week);
        new PlainBroodFolders().write(find("XX-26-A"), folder.resolve("twice"));
        assertThat(new PlainBroodFolders().read(folder.resolve("twice")).problems())
                .isEmpty();
    }

    @Test
    void aReadingTypedIsOneOfAProbeInThatContainer() {
        write().keep("box 1", reading(day(2), 26.4, Quality.GOOD));
        write().keep("box 1", reading(day(1), 26.2, Quality.GOOD));
        write().keep("box 1", reading(day(3), 72, Quality.SUSPECT));
        reopen();
        String probe = HandReading.probeIn("box 1");
        assertThat(series(probe).size()).isEqualTo(3);
        assertThat(find("XX-26-A").probeStays())
                .containsExactlyInAnyOrder(
                        new ProbeStay(probe, "box 1", new Span(day(2), Optional.empty()), 0, 0.5),
                        new ProbeStay(probe, "box 1", new Span(day(1), Optional.of(day(2))), 0, 0.5));
        LivedTemperature lived = LivedTemperature.of(withReadings(find("XX-26-A")), "A1", day(2).plusSeconds(60));
        assertThat(WarmDays.of(lived, celsius -> celsius).between(day(1).plusSeconds(1), day(1).plusSeconds(61)) * 1440)
                .isCloseTo(26.2, within(1e-6));
        assertThat(store.check().problems()).isEmpty();
    }

    @Test
    void theWatchKeepsTheNameOfAPlaceWhoseThermometerIsReadToo() {
        BroodRecord probed = find("XX-26-A").withProbeStays(List.of(InventedBrood.probe("P-1", "box 1", START)));
        takeIn(probed);
        write().keep("box 1", reading(day(1), 26.4, Quality.GOOD));
        assertThat(WatchPlaces.of(store.book()).name("P-1", day(2))).isEqualTo("box 1");
    }

    @Test
    void aReadingUndoneIsNoReadingAnyMore() {
        String probe = HandReading.probeIn("box 1");
        write().keep("box 1", reading(day(1), 26.4, Quality.GOOD));
        write().keep("box 1", reading(day(1).plusSeconds(60), 72, Quality.GOOD));
        write().keep("box 1", reading(day(5), 26.1, Quality.GOOD));
        undo();
        undo();
        assertThat(series(probe).size()).isEqualTo(1);
        assertThat(series(probe).temperatureCelsius(0)).isEqualTo(26.4);
        write().keep("box 1", reading(day(1), 26.4, Quality.GOOD));
        undo();
        assertThat(series(probe).size()).as("the first deed still says so").isEqualTo(1);
        undo();
        assertThat(series(probe).isEmpty()).isTrue();
        assertThat(find("XX-26-A").probeStays()).isEmpty();
        assertThat(store.check().problems()).isEmpty();
    }

    @Test
    void whatWasReadBeforeAnUndoIsReadAnew() {
        String probe = HandReading.probeIn("box 1");
        write().keep("box 1", reading(day(1), 26.4, Quality.GOOD));
        long mark = store.readings().mark();
        undo();
        assertThat(store.readings().earliestSince(probe, mark)).contains(day(1));
    }

    @Test
    void writtenOutAndTakenInAgainItChangesNothing() {
        write().keep(FIRST_DAY);
        write().keep("box 1", reading(day(2), 26.4, Quality.GOOD));
        BroodRecord record = find("XX-26-A");
        new PlainBroodFolders().write(withReadings(record), folder.resolve("out"));
        TakeInFolders.Result again =
                new TakeInFolders(new PlainBroodFolders(), store.book()).takeIn(folder.resolve("out"));
        assertThat(again.problems()).isEmpty();
        assertThat(again.takenIn().orElseThrow().changedNothing()).isTrue();
        assertThat(find("XX-26-A")).isEqualTo(record);
        try (H2Store other = H2Store.open(folder.resolve("other.store"))) {
            new TakeInFolders(new PlainBroodFolders(), other.book()).takeIn(folder.resolve("out"));
            BroodRecord passedOn = other.book().find("XX-26-A").orElseThrow();
            assertThat(passedOn.extremes()).isEqualTo(record.extremes());
            assertThat(passedOn.probeStays()).isEqualTo(record.probeStays());
        }
    }

    @Test
    void nothingOfTheFutureIsWritten() {
        assertThatThrownBy(() -> write().keep(new Extremes("box 1", day(9), day(11), 20, 25)))
                .hasMessageContaining("yet to come");
        assertThatThrownBy(() -> write().keep("box 1", reading(day(11), 26, Quality.GOOD)))
                .hasMessageContaining("yet to come");
        assertThat(store.book().latestDeeds(1)).isEmpty();
    }

    private double meanOfFirstDay() {
        return WarmDays.of(LivedTemperature.of(find("XX-26-A"), "A1", day(1)), celsius -> celsius)
                .between(START, day(1));
    }

    private WriteClimate write() {
        return new WriteClimate(store.book(), store.climate(), () -> NOW, UUID::randomUUID);
    }

    private void undo() {
        assertThat(new UndoDeed(store.book(), () -> NOW, UUID::randomUUID).undo())
                .isPresent();
    }

    private void reopen() {
        store.close();
        store = H2Store.open(file);
    }

    private void takeIn(BroodRecord record) {
        store.book().takeIn(record, ReadingSource.of(record));
    }

    private BroodRecord find(String code) {
        return store.book().find(code).orElseThrow();
    }

    private BroodRecord withReadings(BroodRecord record) {
        return record.withReadings(store.readings().of(record, NOW).gathered());
    }

    private ReadingSeries series(String probe) {
        return store.readings().series(probe, Instant.EPOCH, NOW);
    }

    private static Reading reading(Instant at, double celsius, Quality quality) {
        return new Reading(at, celsius, Double.NaN, quality);
    }

    private static Instant day(int days) {
        return START.plus(Duration.ofDays(days));
    }

    private static BroodRecord brood(String code, String box) {
        BroodRecord bare = InventedBrood.measured(code, START, List.of());
        Span forGood = new Span(START, Optional.empty());
        return new BroodRecord(
                bare.brood(),
                bare.ledger(),
                bare.checks(),
                List.of(
                        new Stay("A1", ContainerKind.TRAY, Optional.of(box), forGood),
                        new Stay(box, ContainerKind.BOX, Optional.empty(), forGood)),
                bare.probeStays(),
                bare.setPoints(),
                bare.readings(),
                bare.mould(),
                bare.care(),
                bare.pots(),
                bare.runUp());
    }
}
