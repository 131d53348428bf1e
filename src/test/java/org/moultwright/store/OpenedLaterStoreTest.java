package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InventedBrood;
import org.moultwright.store.InUseStoreTest.StoreHolder;
import org.moultwright.store.StoreException.Reason;

/** A store that is opened behind those who use it, and what tells whether a closed one was written to since. */
class OpenedLaterStoreTest {
    private static final String BROOD = "LL-26-A";

    @TempDir
    private Path folder;

    private Path file;
    private StoreStamp left;

    @BeforeEach
    void leaveOne() {
        file = folder.resolve("room.store");
        left = H2Store.open(file).closeAtRest().orElseThrow();
    }

    @Test
    void nothingIsTouchedBeforeItIsOpenedAndAllWaitForIt() throws Exception {
        try (H2Store later = H2Store.later(file)) {
            CompletableFuture<Integer> read =
                    CompletableFuture.supplyAsync(() -> later.book().broods().size());
            CompletableFuture<Integer> written = CompletableFuture.supplyAsync(
                    () -> later.book().takeIn(brood(), sink -> {}).rows());
            assertThat(read).isNotDone();
            assertThat(names()).containsExactly("room.store");
            assertThat(H2Store.atRest(file)).contains(left);

            later.openNow();

            assertThat(read.get(10, TimeUnit.SECONDS)).isBetween(0, 1);
            assertThat(written.get(10, TimeUnit.SECONDS)).isPositive();
            later.openNow();
            assertThat(later.book().broods()).hasSize(1);
        }
        assertThat(H2Store.atRest(file)).isPresent().isNotEqualTo(Optional.of(left));
    }

    @Test
    void oneThatCannotBeOpenedTellsEverybodyWhoWaits() throws IOException {
        H2Store later = H2Store.later(file);
        CompletableFuture<Integer> read =
                CompletableFuture.supplyAsync(() -> later.book().broods().size());
        Files.writeString(file, "Dear keeper, ".repeat(2000));

        assertThatThrownBy(later::openNow).isInstanceOf(StoreException.class).hasMessageContaining("is not a store");
        assertThatThrownBy(later::openNow).hasMessageContaining("is not a store");
        assertThat(read)
                .failsWithin(10, TimeUnit.SECONDS)
                .withThrowableOfType(Exception.class)
                .withRootCauseInstanceOf(StoreException.class);
        later.close();
        assertThat(file).hasContent("Dear keeper, ".repeat(2000));
        assertThat(names()).containsExactly("room.store");
    }

    @Test
    void oneThatIsClosedBeforeIsNeverOpened() throws IOException {
        H2Store later = H2Store.later(file);
        later.close();
        assertThatThrownBy(later::openNow)
                .isInstanceOfSatisfying(
                        StoreException.class,
                        fault -> assertThat(fault.reason()).isEqualTo(Reason.FAILED));
        assertThat(H2Store.atRest(file)).contains(left);
    }

    @Test
    void oneInUseHereOrElsewhereIsNotAtRest() throws IOException {
        try (H2Store open = H2Store.open(file)) {
            assertThat(H2Store.atRest(file)).isEmpty();
            assertThat(open.book().broods()).isEmpty();
        }
        Process other = ChildJvm.start(StoreHolder.class, file.toString());
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(other.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(said.readLine()).isEqualTo("open");
            assertThat(H2Store.atRest(file)).isEmpty();
        } finally {
            other.destroyForcibly();
        }
    }

    @Test
    void itsStampChangesWithWhatItHolds() {
        StoreStamp written;
        try (H2Store store = H2Store.open(file)) {
            store.book().takeIn(brood(), sink -> {});
            written = store.closeAtRest().orElseThrow();
        }
        assertThat(written.pagesVersion()).isGreaterThan(left.pagesVersion());
        assertThat(H2Store.atRest(file)).contains(written);
    }

    @Test
    void aFilePutInItsPlaceHasAnother() throws IOException {
        Path other = folder.resolve("other.store");
        H2Store.open(other).close();
        Files.copy(other, file, StandardCopyOption.REPLACE_EXISTING);
        assertThat(H2Store.atRest(file)).isPresent().isNotEqualTo(Optional.of(left));
    }

    @Test
    void oneTouchedHasAnother() throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().plusSeconds(1)));
        assertThat(H2Store.atRest(file)).isPresent().isNotEqualTo(Optional.of(left));
    }

    @Test
    void oneWhoseProgramWasKilledHasNotTheStampItWasLeftWith() throws IOException, InterruptedException {
        ChildJvm.saidUntilKilled(StoreWriter.class, 50, file.toString(), "0");
        assertThat(H2Store.atRest(file)).isNotEqualTo(Optional.of(left));
    }

    @Test
    void oneThatAnotherProgramOpenedAsItWasClosedHasNone() throws IOException {
        H2Store store = H2Store.open(file);
        Files.writeString(folder.resolve("room.store.owner"), "process 1 on elsewhere");
        assertThat(store.closeAtRest()).isEmpty();
    }

    private static BroodRecord brood() {
        return BroodRecord.of(InventedBrood.brood(BROOD));
    }

    private Stream<String> names() throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.map(path -> path.getFileName().toString()).toList().stream();
        }
    }
}
