package org.moultwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmTurn;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.PotEvent;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Reading;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;
import org.moultwright.domain.Timing;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.store.photo.PhotoFolder;
import org.moultwright.workflow.ArrangeShelf;
import org.moultwright.workflow.AttachPhotos;
import org.moultwright.workflow.BeginBrood;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.InventedPots;
import org.moultwright.workflow.NoteDisplay;
import org.moultwright.workflow.PullSac;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.StateBelief;
import org.moultwright.workflow.TendPots;
import org.moultwright.workflow.UndoDeed;
import org.moultwright.workflow.WriteClimate;

/**
 * A store as the program of one past version left it, packed, and beside it what it holds, as brood folders.
 *
 * <p>Run as a program it makes those of the present version, in the folder given, before a migration is added;
 * DEVELOPERS.md gives the command. All that a store can hold is to be in it: broods taken in, deeds kept and
 * undone, readings packed and in rows, with and without raw lines, a display read, an alarm, a lowest and highest, a
 * reading typed, a tray moved, a timing believed, a brood left out of learning, pots fed and handed over, a sac written down and
 * taken from its mother, a file of readings taken in and one taken back, a photo. What a version adds is
 * added here before its store is made.
 *
 * @param version the version of its tables
 * @param folder where all past stores are
 */
record PastStore(int version, Path folder) {
    private static final int BROODS = 2;
    static final String POTTED = "PP-26-P";
    static final String SAC = "own sac";
    static final int WITH_PHOTOS = 7;
    static final String PICTURE_NAME = "A1.gif";
    static final Instant EVENING = Instant.parse("2026-06-01T19:00:00Z");
    private static final Instant END_OF_TIME = Instant.parse("9999-01-01T00:00:00Z");

    public static void main(String[] arguments) throws IOException {
        new PastStore(Migrations.OURS.latest(), Path.of(arguments[0])).make();
    }

    Path packed() {
        return folder.resolve("version-" + version + ".store.gz");
    }

    /** The folders of what it holds. */
    Path broods() {
        return folder.resolve("version-" + version);
    }

    void unpack(Path file) throws IOException {
        try (InputStream bytes = new GZIPInputStream(Files.newInputStream(packed()))) {
            Files.copy(bytes, file);
        }
        if (version >= WITH_PHOTOS) {
            new PhotoFolder(H2Store.photosOf(file)).keep(SamplePictures.gif(), PICTURE_NAME);
        }
    }

    /** Writes every brood of a store as a folder, readings and all. */
    static void writeOut(H2Store store, Path folder) {
        for (Brood brood : store.book().broods()) {
            BroodRecord record = store.book().find(brood.code()).orElseThrow();
            new PlainBroodFolders()
                    .write(record, store.readings().of(record, END_OF_TIME), folder.resolve(brood.code()));
        }
    }

    private void make() throws IOException {
        Files.createDirectories(broods());
        Path file = Files.createTempDirectory("past").resolve("past.store");
        try (H2Store store = H2Store.open(file)) {
            fill(store);
            writeOut(store, broods());
        }
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(packed()))) {
            Files.copy(file, out);
        } catch (IOException e) {
            throw new UncheckedIOException("'" + packed() + "' cannot be written", e);
        }
    }

    private static void fill(H2Store store) {
        for (long seed = 1; store.book().broods().size() < BROODS; seed++) {
            BroodRecord record = SampleRecords.record(seed);
            if (isInOnePlaceAtATime(record)) {
                store.book().takeIn(record, ReadingSource.of(record));
            }
        }
        String brood = store.book().broods().get(0).code();
        store.book().keep(deed(brood, 30));
        store.book().keep(deed(brood, 7));
        new UndoDeed(store.book(), () -> EVENING, UUID::randomUUID).undo();
        StateBelief belief = new StateBelief(store.book(), () -> EVENING, UUID::randomUUID);
        belief.believe(
                brood,
                Optional.of(new Timing(
                        Map.of(Stage.INSTAR2, 70.0),
                        0.15,
                        new RateForm.Table(List.of(new RateForm.Point(15, 0), new RateForm.Point(30, 1.3))))));
        belief.leaveOut(brood, "the heater failed");
        new NoteDisplay(store.book(), store.readings(), () -> EVENING, UUID::randomUUID)
                .save("A1", 26.5, 0.1, "read with a torch");
        WriteClimate write = new WriteClimate(store.book(), store.climate(), () -> EVENING, UUID::randomUUID);
        write.keep(new Extremes("A1", EVENING.minusSeconds(86_400), EVENING, 24.5, 27, 65, 80));
        write.keep("A1", new Reading(EVENING.minusSeconds(3_600), 26.25, 71, Quality.GOOD));
        ArrangeShelf arrange = new ArrangeShelf(store.book(), () -> EVENING, UUID::randomUUID);
        arrange.add("box 9", ContainerKind.BOX, Optional.empty());
        arrange.move("A1", Optional.of("box 9"), EVENING);
        BroodRecord potted = InventedPots.brood(POTTED, "26P", 3);
        store.book().takeIn(potted, ReadingSource.of(potted));
        TendPots tend = new TendPots(store.book(), () -> EVENING, UUID::randomUUID);
        List<TendPots.Chosen> pots = potted.pots().stream()
                .map(pot -> new TendPots.Chosen(POTTED, pot.code()))
                .toList();
        tend.tend(pots, PotEvent.What.FED, EVENING, "");
        tend.tend(pots.subList(0, 1), PotEvent.What.HANDED_OVER, EVENING, "to a club");
        tend.tend(pots, PotEvent.What.DIED, EVENING, "");
        new UndoDeed(store.book(), () -> EVENING, UUID::randomUUID).undo();
        new AttachPhotos(store.book(), store.photos(), () -> EVENING, UUID::randomUUID)
                .attach(
                        brood,
                        "A1",
                        List.of(new AttachPhotos.Offer(
                                PICTURE_NAME, files -> files.keep(SamplePictures.gif(), PICTURE_NAME))));
        begin(store, SAC);
        new PullSac(store.book(), () -> EVENING, UUID::randomUUID)
                .pull(SAC, EVENING.minusSeconds(86_400), Optional.of("box 9"));
        begin(store, "taken back");
        new UndoDeed(store.book(), () -> EVENING, UUID::randomUUID).undo();
        takeInAFile(store, "P-7");
        takeInAFile(store, "P-8");
        new UndoDeed(store.book(), () -> EVENING, UUID::randomUUID).undo();
        store.alarms()
                .append(List.of(new AlarmEntry(
                        UUID.randomUUID(), EVENING, "A1", AlarmKind.HIGH, AlarmTurn.RAISED, 29.5, Optional.empty())));
        for (int minute = 0; minute < 150; minute++) {
            Reading reading = new Reading(EVENING.plusSeconds(60L * minute), 26 + minute / 100.0, 71.5, Quality.GOOD);
            store.readings().append("P-1", List.of(new Logged(reading, "T=" + reading.temperatureCelsius())));
        }
    }

    private static void takeInAFile(H2Store store, String probe) {
        store.bulkReadings()
                .takeIn(
                        new Deed.Summary(
                                UUID.randomUUID(), Optional.empty(), EVENING, "Readings of " + probe + " taken in"),
                        sink -> IntStream.range(0, 300)
                                .mapToObj(number -> new Reading(
                                        EVENING.minusSeconds(300L * number), 25.5, Double.NaN, Quality.GOOD))
                                .forEach(reading -> sink.accept(probe, reading)),
                        () -> List.of(new ProbeStay(
                                probe, "A1", new Span(EVENING.minusSeconds(90_000), Optional.of(EVENING)), 0, 0.5)));
    }

    private static void begin(H2Store store, String code) {
        Instant laid = EVENING.minusSeconds(20 * 86_400);
        new BeginBrood(store.book(), () -> EVENING, UUID::randomUUID)
                .begin(new BeginBrood.Sac(
                        code,
                        "Inventa pulchra",
                        ZoneOffset.UTC,
                        "F-7",
                        Optional.of(new InstantRange(laid, laid.plusSeconds(86_400))),
                        Optional.empty(),
                        Optional.of("box 9")));
    }

    /** A folder with a tray in two places at once could not be read again. */
    private static boolean isInOnePlaceAtATime(BroodRecord record) {
        List<Span> stays = record.stays().stream()
                .filter(stay -> stay.container().equals("A1"))
                .map(Stay::span)
                .sorted(Comparator.comparing(Span::from))
                .toList();
        return stays.get(0)
                .to()
                .filter(end -> !end.isAfter(stays.get(1).from()))
                .isPresent();
    }

    private static Deed deed(String brood, int animals) {
        LedgerEntry opened = InventedBrood.opened(UUID.randomUUID(), EVENING, animals);
        return new Deed(
                new Deed.Summary(UUID.randomUUID(), brood, EVENING, "A1 counted"),
                Optional.empty(),
                Deed.Content.ofEntries(List.of(opened)));
    }
}
