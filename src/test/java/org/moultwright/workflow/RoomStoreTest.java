package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.ForecastQuestion;
import org.moultwright.compute.forecast.NoForecast;
import org.moultwright.compute.forecast.PastBroods;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.ReadingLog.Logged;

/** The room over a real store: what it shows is never older than the store, and little is read to know it. */
class RoomStoreTest {
    private static final Instant START = Instant.parse("2026-03-01T20:00:00Z");
    private static final Duration WHOLE_TIME = Duration.ofDays(3);
    private static final List<String> BROODS = List.of("AA-26-A", "AA-26-B", "AA-26-C");

    @TempDir
    Path folder;

    private final List<ForecastQuestion> asked = Collections.synchronizedList(new ArrayList<>());
    private H2Store store;
    private ReadsOfLog log;
    private Room room;

    @BeforeEach
    void open() {
        store = H2Store.open(folder.resolve("room.store"));
        log = new ReadsOfLog(store.readings());
        room = new Room(store.book(), log, this::forecast);
        BROODS.forEach(code -> store.book().takeIn(brood(code), sink -> {}));
        hear("P-1", START, 200);
        hear("P-2", START, 200);
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void aProbeSharedByAllBroodsIsReadOnce() {
        room.at(START.plus(WHOLE_TIME));
        assertThat(log.reads())
                .containsExactlyInAnyOrder("P-1 from 2026-02-18T00:00:00Z", "P-2 from 2026-02-18T00:00:00Z");
        log.reads().clear();
        room.at(START.plus(WHOLE_TIME));
        assertThat(log.reads()).isEmpty();
    }

    @Test
    void atAGlanceTheRoomIsAsWrittenAndNothingMeasuredIsRead() {
        Instant now = START.plus(WHOLE_TIME);
        RoomView glance = room.written().at(now);
        assertThat(log.reads()).isEmpty();
        assertThat(asked).isEmpty();
        assertThat(glance.awaitsDates()).isTrue();
        RoomView whole = room.at(now);
        assertThat(whole.awaitsDates()).isFalse();
        assertThat(glance.occupiedTrays())
                .isNotEmpty()
                .extracting(TrayView::tray, TrayView::alive, TrayView::composition, TrayView::due)
                .containsExactlyElementsOf(whole.occupiedTrays().stream()
                        .map(tray -> tuple(tray.tray(), tray.alive(), tray.composition(), tray.due()))
                        .toList());
    }

    @Test
    void afterASavedSheetOnlyTheHourThatGotReadingsIsRead() {
        Instant now = START.plusSeconds(200 * 60);
        room.at(now);
        log.reads().clear();
        store.book().keep(deed("AA-26-B", now));
        hear("P-1", now, 1);
        asked.clear();
        RoomView view = room.at(now.plusSeconds(1));
        assertThat(log.reads()).containsExactly("P-1 from 2026-03-01T23:00:00Z");
        assertThat(view.brood("AA-26-A")
                        .orElseThrow()
                        .record()
                        .readings()
                        .get("P-1")
                        .size())
                .isEqualTo(201);
        assertThat(asked)
                .as("only the brood written in is forecast anew")
                .extracting(question -> question.record().brood().code())
                .containsExactly("AA-26-B");
    }

    @Test
    void readingsOfThePastThatComeLateAskForEveryForecastAnew() {
        Instant now = START.plusSeconds(200 * 60);
        room.at(now);
        asked.clear();
        hear("P-1", START.plusSeconds(30), 1);
        room.at(now.plusSeconds(1));
        assertThat(asked).hasSize(BROODS.size());
    }

    @Test
    void afterTheClockWasSetBackTheLatestReadingIsThatOfNow() {
        Instant now = START.plusSeconds(100 * 60 + 1);
        hear("P-1", now, 1);
        assertThat(room.at(now).latestReadings().get("P-1").takenAt()).isEqualTo(now);
    }

    @Test
    void whatACompletedBroodTaughtIsKeptWhileReadingsOfLaterDaysComeIn() {
        Instant now = START.plusSeconds(200 * 60);
        completed("AA-25-A");
        room.at(now);
        PastBroods taught = question("AA-26-B").past();
        assertThat(taught).isNotSameAs(PastBroods.NONE);
        hear("P-1", now, 30);
        store.book().keep(deed("AA-26-B", now));
        asked.clear();
        room.at(now.plusSeconds(1));
        assertThat(question("AA-26-B").past()).isSameAs(taught);
    }

    @Test
    void aReadingOfItsOwnTimeThatComesLateIsTaughtAnew() {
        Instant now = START.plusSeconds(200 * 60);
        completed("AA-25-A");
        room.at(now);
        PastBroods taught = question("AA-26-B").past();
        hear("P-1", START.plusSeconds(30), 1);
        asked.clear();
        room.at(now.plusSeconds(1));
        assertThat(question("AA-26-B").past()).isNotSameAs(taught).isNotSameAs(PastBroods.NONE);
    }

    @Test
    void aBroodLeftOutTeachesNobodyUntilThatIsTakenBack() {
        Instant now = START.plusSeconds(200 * 60);
        completed("AA-25-A");
        StateBelief belief = new StateBelief(store.book(), () -> now, UUID::randomUUID);
        UndoDeed undo = new UndoDeed(store.book(), () -> now, UUID::randomUUID);
        room.at(now);
        belief.leaveOut("AA-25-A", "the heater failed");
        asked.clear();
        RoomView without = room.at(now);
        assertThat(asked).extracting(ForecastQuestion::past).containsOnly(PastBroods.NONE);
        assertThat(without.leftOut().get("AA-25-A"))
                .satisfies(note -> assertThat(note.reason()).isEqualTo("the heater failed"));
        assertThat(without.lastDeed().orElseThrow().words()).isEqualTo("AA-25-A left out of learning");
        belief.learnAgain("AA-25-A");
        asked.clear();
        assertThat(room.at(now).leftOut()).isEmpty();
        assertThat(question("AA-26-B").past()).isNotSameAs(PastBroods.NONE);
        undo.undo();
        assertThat(room.at(now).leftOut()).containsKey("AA-25-A");
        undo.undo();
        assertThat(room.at(now).leftOut()).isEmpty();
    }

    private void completed(String code) {
        List<ProbeStay> probes = List.of(InventedBrood.probe("P-1", "incubator", START));
        store.book().takeIn(InventedBrood.completed(code, START, START.plusSeconds(100 * 60), probes), sink -> {});
    }

    private ForecastQuestion question(String brood) {
        return asked.stream()
                .filter(question -> question.record().brood().code().equals(brood))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whateverComesInWhateverOrderTheRoomShowsWhatTheStoreHolds() {
        long seed = 20260302;
        SplittableRandom random = new SplittableRandom(seed);
        for (int step = 0; step < 150; step++) {
            Instant at = START.plusSeconds(random.nextLong(WHOLE_TIME.toSeconds()));
            String probe = "P-" + (1 + random.nextInt(3));
            if (random.nextInt(4) == 0) {
                Reading late = reading(at, 20 + step / 10.0);
                store.book().takeIn(brood(BROODS.get(0)), sink -> sink.accept(probe, late));
            } else {
                hear(probe, at, 1 + random.nextInt(90));
            }
            if (random.nextInt(3) > 0) {
                Instant now = START.plusSeconds(random.nextLong(WHOLE_TIME.toSeconds()));
                RoomView view = room.at(now);
                for (BroodView brood : view.broods()) {
                    assertThat(brood.record().readings())
                            .as("seed %d, step %d", seed, step)
                            .isEqualTo(store.readings()
                                    .of(brood.record(), now.plusMillis(1))
                                    .gathered());
                }
            }
        }
    }

    private void hear(String probe, Instant first, int count) {
        store.readings()
                .append(
                        probe,
                        IntStream.range(0, count)
                                .mapToObj(i -> new Logged(reading(first.plusSeconds(60L * i), 26 + i / 100.0), ""))
                                .toList());
    }

    private static Reading reading(Instant at, double celsius) {
        return new Reading(at, celsius, Double.NaN, Quality.GOOD);
    }

    private static Deed deed(String brood, Instant at) {
        return new Deed(
                new Deed.Summary(UUID.randomUUID(), brood, at, "A1 counted"),
                Optional.empty(),
                Deed.Content.ofEntries(List.of(InventedBrood.opened(UUID.randomUUID(), at, 3))));
    }

    private static BroodRecord brood(String code) {
        return InventedBrood.measured(
                code,
                START,
                List.of(
                        InventedBrood.probe("P-1", "incubator", START),
                        InventedBrood.probe("P-2", "box " + code, START),
                        InventedBrood.probe("P-1", "box " + code, START)));
    }

    private BroodForecast forecast(ForecastQuestion question) {
        asked.add(question);
        return NoForecast.of(question);
    }
}
