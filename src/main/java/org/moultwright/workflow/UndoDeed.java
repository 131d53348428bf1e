package org.moultwright.workflow;

import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.domain.LedgerEntry;

/**
 * Takes back what the keeper last wrote down.
 *
 * <p>Nothing is erased: each ledger entry is reversed by one that names it, and the deed's looks, notes and
 * pots are marked as withdrawn.
 */
public final class UndoDeed {
    private static final int NEWEST = 1;

    private final BroodBook book;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public UndoDeed(BroodBook book, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.clock = clock;
        this.ids = ids;
    }

    /** What an undo would take back. */
    public Optional<Deed.Summary> next() {
        return book.latestDeeds(NEWEST).stream().findFirst();
    }

    /**
     * Takes back the latest deed that stands; it is on disk when this returns.
     *
     * @return the deed taken back, empty if there was none
     */
    public Optional<Deed.Summary> undo() {
        Optional<Deed> latest = next().flatMap(summary -> book.deed(summary.id()));
        latest.ifPresent(deed -> book.keep(undoing(deed)));
        return latest.map(Deed::summary);
    }

    private Deed undoing(Deed deed) {
        List<LedgerEntry> reversals = deed.content().entries().stream()
                .map(entry -> entry.reversal(ids.get()))
                .toList();
        Deed.Summary summary = new Deed.Summary(
                ids.get(),
                deed.summary().brood(),
                clock.instant(),
                "Undone: " + deed.summary().words());
        return new Deed(summary, Optional.of(deed.summary().id()), Deed.Content.ofEntries(reversals));
    }
}
