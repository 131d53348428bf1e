package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.PhotoNote;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.file.SmallDisk;
import org.moultwright.workflow.AttachPhotos;
import org.moultwright.workflow.AttachPhotos.Attached;
import org.moultwright.workflow.AttachPhotos.Offer;
import org.moultwright.workflow.InventedPots;
import org.moultwright.workflow.PhotoException;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.TakeInFolders;
import org.moultwright.workflow.UndoDeed;

/** Photos in a real store: kept with their pictures, taken back, carried by backups and by brood folders. */
class PhotosStoreTest {
    private static final String BROOD = "PP-26-P";
    private static final Instant EVENING = Instant.parse("2026-06-01T19:00:00Z");

    @TempDir
    private Path folder;

    private String tray = "";

    @Test
    void aPhotoIsThereAfterReopeningAndGoneAfterUndoing() {
        Path file = folder.resolve("room.store");
        try (H2Store store = opened(file)) {
            Attached attached = attach(store, offer("a.gif"));
            assertThat(attached.deed().orElseThrow().words()).isEqualTo(tray + ", a photo");
        }
        try (H2Store store = H2Store.open(file)) {
            assertThat(photos(store)).singleElement().satisfies(photo -> {
                assertThat(photo.name()).isEqualTo("a.gif");
                assertThat(store.photos().find(photo.file())).isPresent();
            });
            assertThat(store.check().problems()).isEmpty();
            new UndoDeed(store.book(), () -> EVENING, UUID::randomUUID).undo();
            assertThat(photos(store)).isEmpty();
            assertThat(store.check().problems()).isEmpty();
        }
    }

    @Test
    void oneThatCannotBeReadHoldsUpNoOther() {
        try (H2Store store = opened(folder.resolve("room.store"))) {
            Attached attached = attach(
                    store,
                    new Offer("letter.txt", files -> files.keep(new byte[] {1, 2, 3}, "letter.txt")),
                    offer("a.gif"),
                    offer("same.gif"));
            assertThat(photos(store)).hasSize(1);
            assertThat(attached.refused())
                    .extracting(refusal -> refusal.why().reason())
                    .containsExactly(PhotoException.Reason.UNREADABLE, PhotoException.Reason.ALREADY_ATTACHED);
        }
    }

    @Test
    void aBackupHasThePicturesAndSoHasWhatIsRestoredFromIt() {
        Path backup = folder.resolve("kept.store");
        try (H2Store store = opened(folder.resolve("room.store"))) {
            attach(store, offer("a.gif"));
            store.backup(backup);
        }
        Path restored = folder.resolve("restored.store");
        H2Store.restore(backup, restored);
        try (H2Store store = H2Store.open(restored)) {
            assertThat(store.check().problems()).isEmpty();
            assertThat(store.photos().look(photos(store).get(0).file(), 10).widthPixels())
                    .isEqualTo(1);
        }
    }

    @Test
    void aPictureThatIsGoneOrChangedIsFoundByTheCheck() throws IOException {
        try (H2Store store = opened(folder.resolve("room.store"))) {
            attach(store, offer("a.gif"));
            Path picture = store.photos().find(photos(store).get(0).file()).orElseThrow();
            Files.writeString(picture, "damaged");
            assertThat(store.check().problems())
                    .singleElement()
                    .satisfies(problem -> assertThat(problem.table()).isEqualTo("tray_photo"));
            Files.delete(picture);
            assertThat(store.check().problems()).hasSize(1);
        }
    }

    @Test
    void aBroodFolderCarriesThemAndTakingItInTwiceChangesNothing() throws IOException {
        Path out = folder.resolve("out");
        try (H2Store store = opened(folder.resolve("room.store"))) {
            attach(store, offer("a.gif"));
            new PlainBroodFolders(store.photos()).write(record(store), out);
            TakeInFolders same = new TakeInFolders(new PlainBroodFolders(), store.book(), Optional.of(store.photos()));
            assertThat(same.takeIn(out).takenIn().orElseThrow().changedNothing())
                    .isTrue();
        }
        try (H2Store other = H2Store.open(folder.resolve("other.store"))) {
            TakeInFolders takeIn =
                    new TakeInFolders(new PlainBroodFolders(), other.book(), Optional.of(other.photos()));
            assertThat(takeIn.takeIn(out).problems()).isEmpty();
            assertThat(photos(other)).hasSize(1);
            assertThat(other.check().problems()).isEmpty();
            assertThat(takeIn.takeIn(out).takenIn().orElseThrow().changedNothing())
                    .isTrue();
        }
        Path picture = out.resolve("photos").resolve(photosIn(out).get(0).file());
        Files.writeString(picture, "another");
        assertThat(new PlainBroodFolders().read(out).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.file()).isEqualTo("photos.csv"));
        Files.delete(picture);
        assertThat(new PlainBroodFolders().read(out).notices()).anyMatch(notice -> notice.contains("passed over"));
    }

    @Test
    void aFullDiskIsSaidAndNothingIsLost() {
        Optional<SmallDisk> disk = SmallDisk.at(folder, 6);
        assumeThat(disk).as("this machine lets a program make a small disk").isPresent();
        try (SmallDisk small = disk.orElseThrow();
                H2Store store = opened(small.file("room.store"))) {
            small.fill();
            Attached attached = attach(store, offer("a.gif"));
            assertThat(attached.deed()).isEmpty();
            assertThat(attached.refused())
                    .singleElement()
                    .satisfies(
                            refusal -> assertThat(refusal.why().advice())
                                    .isEqualTo(
                                            "The disk is full; 'a.gif' was not attached. Free some space and attach it again."));
            assertThat(photos(store)).isEmpty();
        }
    }

    private List<PhotoNote> photosIn(Path out) {
        return record(out).photos();
    }

    private static BroodRecord record(Path out) {
        return new PlainBroodFolders().read(out).record().orElseThrow();
    }

    private H2Store opened(Path file) {
        H2Store store = H2Store.open(file);
        BroodRecord potted = InventedPots.brood(BROOD, "26P", 3);
        store.book().takeIn(potted, ReadingSource.of(potted));
        tray = potted.pots().get(0).tray();
        return store;
    }

    private static Offer offer(String name) {
        return new Offer(name, files -> files.keep(SamplePictures.gif(), name));
    }

    private Attached attach(H2Store store, Offer... offers) {
        return new AttachPhotos(store.book(), store.photos(), () -> EVENING, UUID::randomUUID)
                .attach(BROOD, tray, List.of(offers));
    }

    private static BroodRecord record(H2Store store) {
        return store.book().find(BROOD).orElseThrow();
    }

    private static List<PhotoNote> photos(H2Store store) {
        return record(store).photos();
    }
}
