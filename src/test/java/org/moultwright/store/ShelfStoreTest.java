package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.moultwright.workflow.InventedShelf.A;
import static org.moultwright.workflow.InventedShelf.B;
import static org.moultwright.workflow.InventedShelf.NOW;
import static org.moultwright.workflow.InventedShelf.START;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.compute.climate.LivedTemperature;
import org.moultwright.compute.climate.WarmDays;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.Stage;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.workflow.ArrangeShelf;
import org.moultwright.workflow.InventedShelf;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.ShareTrays;
import org.moultwright.workflow.ShareTrays.Part;
import org.moultwright.workflow.TakeInFolders;
import org.moultwright.workflow.UndoDeed;

/** Containers moved and trays shared out, in a real store. */
class ShelfStoreTest {
    private static final Instant MOVED = START.plus(Duration.ofDays(10));

    @TempDir
    Path folder;

    private H2Store store;

    @BeforeEach
    void open() {
        store = H2Store.open(folder.resolve("room.store"));
        InventedShelf.takeIn(store.book());
        store.readings().append("P-1", steady(24));
        store.readings().append("P-2", steady(28));
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void warmDaysFollowATrayIntoABoxOnlyAnotherBroodKnew() {
        BroodRecord before = find(A);
        arrange().move("A1", Optional.of("box 2"), MOVED);
        reopen();
        assertThat(find(A).probeStays()).extracting(ProbeStay::probe).containsExactlyInAnyOrder("P-1", "P-2");
        assertThat(mean("A1", MOVED.minus(Duration.ofDays(2)))).isCloseTo(24, within(0.05));
        assertThat(mean("A1", MOVED.plus(Duration.ofDays(2)))).isCloseTo(28, within(0.05));
        assertThat(mean("A2", MOVED.plus(Duration.ofDays(2)))).isCloseTo(24, within(0.05));
        assertThat(find(B).stays()).isEqualTo(InventedShelf.broodB().stays());
        undo();
        assertThat(find(A)).isEqualTo(before);
        assertThat(store.check().problems()).isEmpty();
    }

    @Test
    void aBoxMovedIsMovedForEveryBroodThatKnowsIt() {
        arrange().add("INC-2", ContainerKind.INCUBATOR, Optional.empty());
        arrange().move("box 1", Optional.of("INC-2"), MOVED.plus(Duration.ofDays(10)));
        reopen();
        assertThat(store.book().shelf().pathOf("A1", NOW)).containsExactly("A1", "box 1", "INC-2");
        assertThat(store.book().shelf().pathOf("A1", NOW.minusNanos(1))).containsExactly("A1", "box 1", "INC-1");
        undo();
        undo();
        assertThat(store.book().shelf().stays())
                .noneMatch(stay -> stay.container().equals("INC-2"));
    }

    @Test
    void aSplitIsOneDeedOfEntriesAndAPlace() {
        BroodRecord before = find(A);
        share().split(new Part(A, "A1", "A7", true, Map.of(Stage.EGG, 5, Stage.INSTAR2, 2), Cause.ISOLATED, "bitten"));
        reopen();
        assertThat(find(A).ledger().balance(Account.tray("A7"))).isEqualTo(7);
        assertThat(store.book().shelf().pathOf("A7", NOW)).containsExactly("A7", "box 1", "INC-1");
        assertThat(store.book()
                        .deed(store.book().latestDeeds(1).get(0).id())
                        .orElseThrow()
                        .content()
                        .moves())
                .hasSize(1);
        undo();
        assertThat(find(A).stays()).isEqualTo(before.stays());
        assertThat(find(A).ledger().aliveInTrays()).isEqualTo(before.ledger().aliveInTrays());
        assertThat(find(A).ledger().balance(Account.tray("A7"))).isZero();
        assertThat(store.check().problems()).isEmpty();
    }

    @Test
    void writtenOutAndTakenInAgainItChangesNothingAndElsewhereTellsAll() {
        arrange().move("A1", Optional.of("box 2"), MOVED);
        share().merge(A, "A2", "A1", true);
        BroodRecord record = find(A);
        Path out = folder.resolve("out");
        new PlainBroodFolders()
                .write(record.withReadings(store.readings().of(record, NOW).gathered()), out);
        TakeInFolders.Result again = new TakeInFolders(new PlainBroodFolders(), store.book()).takeIn(out);
        assertThat(again.problems()).isEmpty();
        assertThat(again.takenIn().orElseThrow().changedNothing()).isTrue();
        assertThat(find(A)).isEqualTo(record);
        try (H2Store other = H2Store.open(folder.resolve("other.store"))) {
            new TakeInFolders(new PlainBroodFolders(), other.book()).takeIn(out);
            BroodRecord passedOn = other.book().find(A).orElseThrow();
            assertThat(passedOn.stays()).containsExactlyInAnyOrderElementsOf(record.stays());
            assertThat(passedOn.probeStays()).containsExactlyInAnyOrderElementsOf(record.probeStays());
        }
    }

    private static List<Logged> steady(double celsius) {
        return Stream.iterate(START, at -> at.isBefore(NOW), at -> at.plus(Duration.ofMinutes(10)))
                .map(at -> new Logged(new Reading(at, celsius, 70, Quality.GOOD), ""))
                .toList();
    }

    private double mean(String tray, Instant around) {
        Instant from = around.minus(Duration.ofHours(6));
        Instant to = around.plus(Duration.ofHours(6));
        BroodRecord record = find(A);
        LivedTemperature lived = LivedTemperature.of(
                record.withReadings(store.readings().of(record, NOW).gathered()), tray, NOW);
        return WarmDays.of(lived, celsius -> celsius).between(from, to) * 2;
    }

    private BroodRecord find(String code) {
        return store.book().find(code).orElseThrow();
    }

    private ArrangeShelf arrange() {
        return new ArrangeShelf(store.book(), () -> NOW, UUID::randomUUID);
    }

    private ShareTrays share() {
        return new ShareTrays(store.book(), () -> NOW, UUID::randomUUID);
    }

    private void undo() {
        assertThat(new UndoDeed(store.book(), () -> NOW, UUID::randomUUID).undo())
                .isPresent();
    }

    private void reopen() {
        store.close();
        store = H2Store.open(folder.resolve("room.store"));
    }
}
