package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.moultwright.domain.CareNote;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.ChildJvm;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.WrittenRoom;

/** A room is found as it was left as long as its store is exactly that; else the store is waited for. */
class LeftRoomsStoreTest {
    private static final Instant EVENING = DemoRoom.USUAL_EVENING;
    private static final LeftRooms ROOMS = new LeftRooms(Optional.of("this build"));

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void isWhatTheStoreHolds(DeskRoom kind) {
        Path store = folder.resolve("any.store");
        leave(store, kind);
        LeftRooms.Found found = ROOMS.find(store).orElseThrow();
        try (H2Store opened = H2Store.open(store)) {
            OpenedRoom read = opened(opened, EVENING);
            assertThat(found.room()).isEqualTo(read.room().written());
            assertThat(found.room().at(EVENING)).isEqualTo(read.written());
            assertThat(found.room().broods()).hasSameSizeAs(read.broods());
        }
        found.store().close();
    }

    @Test
    void isShownAtTheInstantItIsAskedFor() {
        leave(demo(), DeskRoom.DEMO);
        WrittenRoom room = ROOMS.find(demo()).orElseThrow().room();
        Instant before = EVENING.minus(Duration.ofDays(20));
        try (H2Store opened = H2Store.open(demo())) {
            assertThat(room.at(before)).isEqualTo(opened(opened, before).written());
        }
        assertThat(room.at(before)).isNotEqualTo(room.at(EVENING));
    }

    @Test
    void isNotOnceSomethingWasWritten() {
        leave(demo(), DeskRoom.DEMO);
        try (H2Store store = H2Store.open(demo())) {
            store.book().keep(watered());
        }
        assertThat(ROOMS.find(demo())).isEmpty();
    }

    @Test
    void isNotWhereAnotherStoreWasPutInItsPlace() throws IOException {
        leave(demo(), DeskRoom.DEMO);
        Path other = folder.resolve("other.store");
        leave(other, DeskRoom.DEMO);
        Files.copy(other, demo(), StandardCopyOption.REPLACE_EXISTING);
        assertThat(ROOMS.find(demo())).isEmpty();
    }

    @Test
    void isNotForAnotherBuildNorForOneThatIsNotTold() {
        leave(demo(), DeskRoom.DEMO);
        assertThat(new LeftRooms(Optional.of("a later build")).find(demo())).isEmpty();
        assertThat(DeskRoom.NOT_KEPT.find(demo())).isEmpty();
        assertThat(ROOMS.find(demo())).isPresent();
    }

    @Test
    void isNotWhileTheStoreIsInUse() {
        leave(demo(), DeskRoom.DEMO);
        try (H2Store store = H2Store.open(demo())) {
            assertThat(ROOMS.find(demo())).isEmpty();
            assertThat(store.book().broods()).isNotEmpty();
        }
    }

    @Test
    void isNotWhereThereIsNoStore() {
        assertThat(ROOMS.find(folder.resolve("none.store"))).isEmpty();
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void isNotAfterAKill() throws IOException, InterruptedException {
        leave(demo(), DeskRoom.DEMO);
        Process desk = ChildJvm.start(Killed.class, demo().toString());
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(desk.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(said.readLine()).isEqualTo("kept");
        } finally {
            desk.destroyForcibly().waitFor();
        }
        assertThat(ROOMS.find(demo())).isEmpty();
        try (H2Store store = H2Store.open(demo())) {
            assertThat(store.book().latestDeeds(1).get(0).words()).isEqualTo("A1 watered");
        }
    }

    @Test
    void whereItCannotBeKeptTheStoreIsClosedAllTheSame() throws IOException {
        Files.createDirectories(folder.resolve("demo.store.left").resolve("in the way"));
        leave(demo(), DeskRoom.DEMO);
        assertThat(ROOMS.find(demo())).isEmpty();
        H2Store.open(demo()).close();
    }

    @Test
    void aDemoRoomGoesOnFromWhatWasWrittenLast() {
        leave(demo(), DeskRoom.DEMO);
        Instant later = EVENING.plus(Duration.ofMinutes(40));
        H2Store store = H2Store.open(demo());
        store.book().keep(watered(later));
        opened(store, EVENING).close();
        LeftRooms.Found found = ROOMS.find(demo()).orElseThrow();
        OpenedRoom room = DemoRoom.asLeft(found, EVENING, settings(), ROOMS).orElseThrow();
        assertThat(room.clock().instant()).isBetween(later, later.plus(Duration.ofMinutes(5)));
    }

    @Test
    void aDemoRoomLeftBeforeAllBroodsWereInItIsNotTaken() {
        leave(demo(), DeskRoom.EMPTY);
        LeftRooms.Found found = ROOMS.find(demo()).orElseThrow();
        assertThat(DemoRoom.asLeft(found, EVENING, settings(), ROOMS)).isEmpty();
    }

    private void leave(Path file, DeskRoom kind) {
        H2Store store = H2Store.open(file);
        kind.fill(store, EVENING);
        opened(store, EVENING).close();
    }

    private OpenedRoom opened(H2Store store, Instant now) {
        return OpenedRoom.of(store, () -> now, settings(), ROOMS);
    }

    private SettingsFile settings() {
        return new SettingsFile(folder.resolve("settings.txt"));
    }

    private static Deed watered() {
        return watered(EVENING);
    }

    static Deed watered(Instant at) {
        CareNote watered = new CareNote(UUID.randomUUID(), at, "A1", CareNote.WATERED, "");
        return new Deed(
                new Deed.Summary(UUID.randomUUID(), "CC-26-A", at, "A1 watered"),
                Optional.empty(),
                new Deed.Content(List.of(), List.of(), List.of(), List.of(watered), List.of()));
    }

    private Path demo() {
        return folder.resolve("demo.store");
    }

    /** Opens a store, keeps a deed, and waits to be killed. */
    static final class Killed {
        private Killed() {}

        public static void main(String[] arguments) throws IOException {
            try (H2Store store = H2Store.open(Path.of(arguments[0]))) {
                store.book().keep(watered());
                System.out.println("kept");
                System.in.read();
            }
        }
    }
}
