package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.moultwright.domain.Account;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.LedgerEntry;

/**
 * What a sitter wrote since the desk was handed over and did not take back, as the book tells it: however often the desk
 * was opened meanwhile. Nothing of it while the desk is in the keeper's hands.
 */
public final class SittersWork {
    private static final int NEWEST = 1;

    private final BroodBook book;
    private final SitterMode mode;

    public SittersWork(BroodBook book, SitterMode mode) {
        this.book = book;
        this.mode = mode;
    }

    /** What can be taken back next. */
    public Optional<Written> last() {
        return written(book.latestDeeds(NEWEST)).findFirst();
    }

    /** One press of it, by its id. */
    public Optional<Written> find(UUID id) {
        return book.deed(id).flatMap(Written::of);
    }

    /** All of it, newest first. */
    public List<Written> all() {
        return written(book.latestDeeds(Integer.MAX_VALUE)).toList();
    }

    private Stream<Written> written(List<Deed.Summary> latest) {
        return mode.since().stream()
                .flatMap(since ->
                        latest.stream().takeWhile(deed -> !deed.doneAt().isBefore(since)))
                .flatMap(deed -> book.deed(deed.id()).stream())
                .filter(deed -> SitterDeeds.areAll(deed.content()))
                .flatMap(deed -> Written.of(deed).stream());
    }

    /**
     * One press of a sitter.
     *
     * @param deed names it for ever
     * @param at when it was written
     * @param brood the code of the tray's brood
     * @param tray the tray's code
     * @param dead how many were found dead; none where water was given
     */
    public record Written(UUID deed, Instant at, String brood, String tray, int dead) {
        static Optional<Written> of(Deed deed) {
            Deed.Summary summary = deed.summary();
            Deed.Content content = deed.content();
            Optional<String> tray = Stream.concat(
                            content.entries().stream().map(LedgerEntry::from).map(Account::code),
                            content.care().stream().map(CareNote::tray))
                    .findFirst();
            int dead = content.entries().stream().mapToInt(LedgerEntry::count).sum();
            return summary.brood()
                    .flatMap(brood -> tray.map(code -> new Written(summary.id(), summary.doneAt(), brood, code, dead)));
        }
    }
}
