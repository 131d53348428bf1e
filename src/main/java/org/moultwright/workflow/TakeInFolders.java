package org.moultwright.workflow;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.Check;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.PhotoNote;
import org.moultwright.domain.PotEvent;
import org.moultwright.domain.RunUpEvent;

/**
 * Takes brood folders into the book, each all or nothing.
 *
 * <p>A row that says what the book already says is not taken in again, whoever wrote it first: taking in a
 * folder twice, or one that was written from this very book, changes nothing.
 */
public final class TakeInFolders {
    private final BroodFolders folders;
    private final BroodBook book;
    private final Optional<PhotoFiles> photos;

    /** Takes in folders without their photos. */
    public TakeInFolders(BroodFolders folders, BroodBook book) {
        this(folders, book, Optional.empty());
    }

    /** @param photos where the pictures of photos go; photos are left out where there is none */
    public TakeInFolders(BroodFolders folders, BroodBook book, Optional<PhotoFiles> photos) {
        this.folders = folders;
        this.book = book;
        this.photos = photos;
    }

    /** Takes in one folder whole. */
    public Result takeIn(Path folder) {
        return takeIn(folder, Optional.empty());
    }

    /** Takes in one folder as it was known at an instant: what was written later is left out. */
    public Result takeInUntil(Path folder, Instant instant) {
        return takeIn(folder, Optional.of(instant));
    }

    private Result takeIn(Path folder, Optional<Instant> until) {
        BroodFolders.FolderContent content = folders.read(folder);
        Optional<BroodRecord> record = content.record();
        if (record.isEmpty()) {
            return new Result(folder, Optional.empty(), Optional.empty(), content.problems(), content.notices());
        }
        BroodRecord known = until.map(record.get()::until).orElse(record.get());
        ReadingSource readings =
                until.map(instant -> until(instant, content.readings())).orElse(content.readings());
        BroodRecord withPhotos = known.withPhotos(
                photos.map(files -> kept(known.photos(), content, files)).orElse(List.of()));
        BroodBook.TakenIn takenIn = book.takeIn(inTheBooksWords(withPhotos), readings);
        return new Result(
                folder, Optional.of(known.brood().code()), Optional.of(takenIn), List.of(), content.notices());
    }

    /** Pictures come first: a photo in the book has its picture. */
    private static List<PhotoNote> kept(List<PhotoNote> notes, BroodFolders.FolderContent content, PhotoFiles files) {
        return notes.stream()
                .map(note -> {
                    byte[] picture = content.pictures().read(note.file());
                    return new PhotoNote(
                            note.id(), note.at(), note.tray(), files.keep(picture, note.file()), note.name());
                })
                .toList();
    }

    /** The folder's brood, in which each row the book holds already is the book's own row. */
    private BroodRecord inTheBooksWords(BroodRecord record) {
        Optional<BroodRecord> held = book.find(record.brood().code());
        if (held.isEmpty()) {
            return record;
        }
        BroodRecord known = held.get();
        return new BroodRecord(
                record.brood(),
                Ledger.of(same(record.ledger().entries(), known.ledger().standing(), TakeInFolders::facts)),
                same(record.checks(), known.checks(), TakeInFolders::facts),
                record.stays(),
                record.probeStays(),
                record.setPoints(),
                record.readings(),
                same(record.mould(), known.mould(), TakeInFolders::facts),
                same(record.care(), known.care(), TakeInFolders::facts),
                record.pots(),
                same(record.runUp(), known.runUp(), TakeInFolders::facts),
                record.extremes(),
                same(record.potEvents(), known.potEvents(), TakeInFolders::facts),
                same(record.photos(), known.photos(), TakeInFolders::facts));
    }

    /** The rows, each replaced by one the book holds with the same facts, as often as it holds one. */
    private static <T> List<T> same(List<T> rows, List<T> held, Function<T, List<Object>> facts) {
        Map<List<Object>, Deque<T>> byFacts = new HashMap<>();
        held.forEach(row -> byFacts.computeIfAbsent(facts.apply(row), key -> new ArrayDeque<>())
                .add(row));
        return rows.stream()
                .map(row -> {
                    Deque<T> alike = byFacts.getOrDefault(facts.apply(row), new ArrayDeque<>());
                    return alike.isEmpty() ? row : alike.remove();
                })
                .toList();
    }

    private static List<Object> facts(LedgerEntry entry) {
        return List.of(entry.at(), entry.from(), entry.to(), entry.stage(), entry.count(), entry.cause());
    }

    private static List<Object> facts(Check check) {
        return List.of(check.at(), check.tray(), check.looks());
    }

    private static List<Object> facts(MouldNote note) {
        return List.of(note.at(), note.tray(), note.where(), note.extent(), note.action(), note.lost());
    }

    private static List<Object> facts(CareNote note) {
        return List.of(note.at(), note.tray(), note.what(), note.note());
    }

    private static List<Object> facts(PhotoNote note) {
        return List.of(note.at(), note.tray(), note.file(), note.name());
    }

    private static List<Object> facts(PotEvent event) {
        return List.of(event.at(), event.pot(), event.what(), event.note());
    }

    private static List<Object> facts(RunUpEvent event) {
        return List.of(event.at(), event.what(), event.note());
    }

    private static ReadingSource until(Instant instant, ReadingSource all) {
        return sink -> all.handOver((probe, reading) -> {
            if (!reading.takenAt().isAfter(instant)) {
                sink.accept(probe, reading);
            }
        });
    }

    /**
     * How a folder was taken in.
     *
     * @param brood the brood's code, empty where the folder has problems
     * @param takenIn what was new, empty where the folder has problems
     * @param problems what must be mended first
     * @param notices what was passed over or assumed, and questions left open
     */
    public record Result(
            Path folder,
            Optional<String> brood,
            Optional<BroodBook.TakenIn> takenIn,
            List<BroodFolders.FolderProblem> problems,
            List<String> notices) {
        public Result {
            problems = List.copyOf(problems);
            notices = List.copyOf(notices);
        }
    }
}
