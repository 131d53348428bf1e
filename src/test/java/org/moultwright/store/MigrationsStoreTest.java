package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.workflow.BroodFolders.FolderContent;
import org.moultwright.workflow.UndoDeed;

/**
 * A store of every version there ever was comes to the present one with all it holds, after a verified backup,
 * and on to a next one whose steps exist for tests only.
 */
class MigrationsStoreTest {
    private static final String MIGRATIONS = "/org/moultwright/store/migration/V1__broods_and_readings.sql";
    private static final int WITH_INSTRUMENTS = 2;
    private static final int WITH_BELIEFS = 4;
    private static final int WITH_CLIMATE_WRITTEN = 4;
    private static final int WITH_CONTAINERS_MOVED = 5;
    private static final int WITH_FILES_TAKEN_IN = 7;
    private static final int WITH_POTS_LIVED_IN = 6;
    private static final int WITH_SACS = 6;
    private static final Migrations WITH_A_NEXT = withA("next");
    private static final Migrations WITH_A_BROKEN_NEXT = withA("broken");

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("room.store");
    }

    static Stream<PastStore> pastStores() throws URISyntaxException {
        Path past = resource("/org/moultwright/store/past/version-1.store.gz").getParent();
        return IntStream.rangeClosed(1, Migrations.OURS.latest()).mapToObj(version -> new PastStore(version, past));
    }

    @Test
    void theLatestVersionIsThatOfTheLastMigration() throws IOException, URISyntaxException {
        try (Stream<Path> files = Files.list(resource(MIGRATIONS).getParent())) {
            int last = files.map(path -> path.getFileName().toString())
                    .mapToInt(name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
                    .max()
                    .orElseThrow();
            assertThat(Migrations.OURS.latest()).isEqualTo(last);
        }
    }

    @ParameterizedTest
    @MethodSource("pastStores")
    void aPastStoreIsOpenedWithAllItHolds(PastStore past) throws IOException {
        past.unpack(file);
        byte[] before = Files.readAllBytes(file);
        try (H2Store store = H2Store.open(file)) {
            assertThat(store.check().problems()).isEmpty();
            requireSameBroods(store, past);
            int instruments = past.version() >= WITH_INSTRUMENTS ? 1 : 0;
            assertThat(store.climate().displays()).hasSize(instruments);
            assertThat(store.alarms().of("A1")).hasSize(instruments);
            assertThat(store.book().leftOut()).hasSize(past.version() >= WITH_BELIEFS ? 1 : 0);
            int written = past.version() >= WITH_CLIMATE_WRITTEN ? 1 : 0;
            assertThat(store.climate().extremes()).hasSize(written);
            boolean isFileTakenIn = past.version() >= WITH_FILES_TAKEN_IN;
            assertThat(store.climate().placings()).hasSize(isFileTakenIn ? written + 1 : written);
            assertThat(store.readings().latest().containsKey("P-7")).isEqualTo(isFileTakenIn);
            assertThat(store.book().shelf().stayOf("box 9", PastStore.EVENING).isPresent())
                    .isEqualTo(past.version() >= WITH_CONTAINERS_MOVED);
            assertThat(store.book()
                            .find(PastStore.SAC)
                            .flatMap(sac -> sac.brood().pulled()))
                    .isEqualTo(
                            past.version() >= WITH_SACS
                                    ? Optional.of(PastStore.EVENING.minusSeconds(86_400))
                                    : Optional.empty());
        }
        if (past.version() < Migrations.OURS.latest()) {
            assertThat(backup(past.version())).hasBinaryContent(before);
        }
    }

    @Test
    void aStoreThatKnewPotsLivedInHoldsWhatHappenedAndWhatWasTakenBack() throws IOException, URISyntaxException {
        new PastStore(
                        WITH_POTS_LIVED_IN,
                        resource("/org/moultwright/store/past/version-6.store.gz")
                                .getParent())
                .unpack(file);
        try (H2Store store = H2Store.open(file)) {
            BroodRecord record = store.book().find(PastStore.POTTED).orElseThrow();
            assertThat(record.pots()).extracting(pot -> pot.size()).containsExactly("30 ml", "30 ml", "60 ml");
            assertThat(record.potEvents())
                    .extracting(event -> event.what().key() + event.note())
                    .containsExactly("fed", "fed", "fed", "handed-overto a club");
            assertThat(record.ledger().balance(Account.POTTED)).isEqualTo(2);
        }
    }

    @Test
    void aFileTakenInByAPastVersionIsTakenOutAgain() throws IOException, URISyntaxException {
        new PastStore(
                        WITH_FILES_TAKEN_IN,
                        resource("/org/moultwright/store/past/version-7.store.gz")
                                .getParent())
                .unpack(file);
        try (H2Store store = H2Store.open(file)) {
            UndoDeed undo = new UndoDeed(store.book(), () -> PastStore.EVENING, UUID::randomUUID);
            undo.undo(undo.latest(Integer.MAX_VALUE).stream()
                    .filter(deed -> deed.words().equals("Readings of P-7 taken in"))
                    .findFirst()
                    .orElseThrow()
                    .id());
            assertThat(store.readings().latest()).doesNotContainKeys("P-7", "P-8");
            assertThat(store.check().problems()).isEmpty();
        }
    }

    @Test
    void aStoreThatKnewPhotosHoldsThem() throws IOException, URISyntaxException {
        new PastStore(
                        PastStore.WITH_PHOTOS,
                        resource("/org/moultwright/store/past/version-7.store.gz")
                                .getParent())
                .unpack(file);
        try (H2Store store = H2Store.open(file)) {
            assertThat(store.book().broods())
                    .flatExtracting(brood ->
                            store.book().find(brood.code()).orElseThrow().photos())
                    .singleElement()
                    .satisfies(photo -> {
                        assertThat(photo.name()).isEqualTo(PastStore.PICTURE_NAME);
                        assertThat(photo.tray()).isEqualTo("A1");
                        assertThat(store.photos().find(photo.file())).isPresent();
                    });
        }
    }

    @ParameterizedTest
    @MethodSource("pastStores")
    void aStoreIsBackedUpAndThenBroughtToTheNextVersion(PastStore past) throws IOException {
        past.unpack(file);
        byte[] before = Files.readAllBytes(file);
        try (H2Store store = H2Store.open(file, WITH_A_NEXT)) {
            requireSameBroods(store, past);
        }
        assertThat(StoreGuard.version(file)).isEqualTo(WITH_A_NEXT.latest());
        assertThat(backup(past.version())).hasBinaryContent(before);
        assertThat(files()).containsExactlyInAnyOrder(file, backup(past.version()));
        StoreException refusal = catchThrowableOfType(StoreException.class, () -> H2Store.open(file));
        assertThat(refusal.reason()).as("this program knows no such version").isEqualTo(Reason.NEWER_SCHEMA);
        try (H2Store old = H2Store.open(backup(past.version()))) {
            requireSameBroods(old, past);
        }
    }

    @ParameterizedTest
    @MethodSource("pastStores")
    void aStepThatFailsLeavesTheStoreAndItsBackupWhole(PastStore past) throws IOException {
        past.unpack(file);
        byte[] before = Files.readAllBytes(file);
        for (int attempt = 0; attempt < 2; attempt++) {
            StoreException refusal =
                    catchThrowableOfType(StoreException.class, () -> H2Store.open(file, WITH_A_BROKEN_NEXT));
            assertThat(refusal.reason()).isEqualTo(Reason.NOT_UP_TO_DATE);
            assertThat(refusal)
                    .hasMessageStartingWith(
                            "'%s' could not be brought from version %d to %d. A backup of it is '%s'. Nothing in it",
                            file, past.version(), WITH_A_BROKEN_NEXT.latest(), backup(past.version()));
            assertThat(file).hasBinaryContent(before);
            assertThat(backup(past.version())).hasBinaryContent(before);
            assertThat(files())
                    .as("a second attempt makes no second backup of the same")
                    .containsExactlyInAnyOrder(file, backup(past.version()));
        }
        try (H2Store store = H2Store.open(file)) {
            assertThat(store.check().problems()).isEmpty();
            requireSameBroods(store, past);
        }
    }

    @Test
    void anotherFileOfTheBackupsNameStays() throws IOException, URISyntaxException {
        PastStore past = pastStores().findFirst().orElseThrow();
        past.unpack(file);
        Files.writeString(backup(1), "the keeper's own");
        H2Store.open(file, WITH_A_NEXT).close();
        assertThat(backup(1)).hasContent("the keeper's own");
        assertThat(StoreGuard.version(folder.resolve("room.store.version-1.backup-2")))
                .isEqualTo(1);
    }

    private Path backup(int version) {
        return folder.resolve("room.store.version-" + version + ".backup");
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    private void requireSameBroods(H2Store store, PastStore past) throws IOException {
        Path now = Files.createTempDirectory(folder, "broods");
        PastStore.writeOut(store, now);
        List<Path> then = broods(past.broods());
        assertThat(broods(now)).hasSameSizeAs(then);
        for (Path brood : then) {
            FolderContent expected = new PlainBroodFolders().read(brood);
            FolderContent found =
                    new PlainBroodFolders().read(now.resolve(brood.getFileName().toString()));
            assertThat(expected.record()).isPresent();
            assertThat(found.record()).isEqualTo(expected.record());
            assertThat(found.readings().gathered())
                    .isEqualTo(expected.readings().gathered());
        }
    }

    private static List<Path> broods(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.sorted().toList();
        }
    }

    private static Migrations withA(String next) {
        return new Migrations(
                Migrations.OURS.latest() + 1,
                Stream.concat(Migrations.OURS.places().stream(), Stream.of("classpath:org/moultwright/store/" + next))
                        .toList());
    }

    private static Path resource(String name) throws URISyntaxException {
        return Path.of(Objects.requireNonNull(MigrationsStoreTest.class.getResource(name), name)
                .toURI());
    }
}
