package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.LessonNote;
import org.moultwright.domain.Require;
import org.moultwright.domain.Shelf;

/**
 * The keeper's book while a sitter may have it: then it takes animals counted dead, trays watered and a word of it, and
 * the taking back of what the sitter wrote; everything else is refused, whoever asks.
 */
public final class SittersBook implements BroodBook {
    private final BroodBook book;
    private final SitterMode mode;

    public SittersBook(BroodBook book, SitterMode mode) {
        this.book = book;
        this.mode = mode;
    }

    /** Readings taken in from files, which are the keeper's too. */
    public static BulkReadings guarding(BulkReadings readings, SitterMode mode) {
        return (summary, taken, placings) -> {
            requireKeeper(mode);
            return readings.takeIn(summary, taken, placings);
        };
    }

    @Override
    public List<Brood> broods() {
        return book.broods();
    }

    @Override
    public Optional<BroodRecord> find(String code) {
        return book.find(code);
    }

    @Override
    public TakenIn takeIn(BroodRecord record, ReadingSource readings) {
        requireKeeper(mode);
        return book.takeIn(record, readings);
    }

    @Override
    public void keep(Deed deed) {
        mode.since().ifPresent(since -> Require.that(isOfSitter(deed, since), SitterDeeds.REFUSAL));
        book.keep(deed);
    }

    @Override
    public Map<String, LessonNote> leftOut() {
        return book.leftOut();
    }

    @Override
    public List<Deed.Summary> latestDeeds(int most) {
        return book.latestDeeds(most);
    }

    @Override
    public Optional<Deed> deed(UUID id) {
        return book.deed(id);
    }

    @Override
    public Shelf shelf() {
        return book.shelf();
    }

    private boolean isOfSitter(Deed deed, Instant since) {
        return deed.undoes().isEmpty()
                ? SitterDeeds.areAll(deed.content())
                : deed.undoes()
                        .flatMap(book::deed)
                        .filter(undone ->
                                !undone.summary().doneAt().isBefore(since) && SitterDeeds.areAll(undone.content()))
                        .isPresent();
    }

    private static void requireKeeper(SitterMode mode) {
        Require.that(mode.since().isEmpty(), SitterDeeds.REFUSAL);
    }
}
