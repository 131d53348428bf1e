package org.moultwright.workflow;

import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.moultwright.domain.Brood;
import org.moultwright.domain.ContainerMove;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

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

    /** The deeds that can be taken back, newest first, at most {@code most}. */
    public List<Deed.Summary> latest(int most) {
        return book.latestDeeds(most);
    }

    /**
     * Takes back the latest deed that stands; it is on disk when this returns.
     *
     * @return the deed taken back, empty if there was none
     */
    public Optional<Deed.Summary> undo() {
        return next().map(latest -> undo(latest.id()));
    }

    /**
     * Takes back a deed, whatever was written since; it is on disk when this returns.
     *
     * @return the deed taken back
     * @throws IllegalArgumentException if it does not stand any more, or what was written since rests on it; with a
     *     sentence that says on what
     */
    public Deed.Summary undo(UUID id) {
        Deed deed = book.deed(id).orElseThrow(() -> new IllegalArgumentException(Texts.say("It is not in the book.")));
        requireNothingRestsOn(deed);
        try {
            book.keep(undoing(deed));
        } catch (IllegalArgumentException fault) {
            throw new IllegalArgumentException(
                    Texts.say("What was written later rests on it: {0}. Take that back first.", fault.getMessage()),
                    fault);
        }
        return deed.summary();
    }

    /**
     * Animals are held by the ledger, which the book checks; where a container stands, by what was moved last; a pot by
     * what happened to it; a brood by the deed that began it.
     */
    private void requireNothingRestsOn(Deed deed) {
        Set<String> moved =
                deed.content().moves().stream().map(ContainerMove::container).collect(Collectors.toSet());
        Set<String> pots = deed.content().allPots().map(Pot::code).collect(Collectors.toSet());
        Optional<String> begun = deed.content().sac().begun().map(Brood::code);
        boolean canBeRestedOn = !moved.isEmpty() || !pots.isEmpty() || begun.isPresent();
        List<Deed.Summary> standing = canBeRestedOn ? book.latestDeeds(Integer.MAX_VALUE) : List.of();
        for (Deed.Summary later : standing) {
            if (later.id().equals(deed.summary().id())) {
                return;
            }
            boolean isOfBrood = begun.isPresent() && later.brood().equals(begun);
            Require.that(
                    !isOfBrood
                            && book.deed(later.id())
                                    .filter(other -> movesAny(other, moved)
                                            || tellsOfAny(other, pots)
                                            || begun.filter(code -> tellsOf(other, code))
                                                    .isPresent())
                                    .isEmpty(),
                    Texts.say("'{0}' was written later and rests on it. Take that back first.", later.words()));
        }
    }

    private static boolean movesAny(Deed deed, Set<String> containers) {
        return deed.content().moves().stream()
                .anyMatch(move -> containers.contains(move.container())
                        || move.inside().filter(containers::contains).isPresent());
    }

    private static boolean tellsOfAny(Deed deed, Set<String> pots) {
        return deed.content().potChanges().stream()
                .flatMap(changes -> changes.events().stream())
                .anyMatch(event -> pots.contains(event.pot()));
    }

    private static boolean tellsOf(Deed deed, String brood) {
        return deed.content().potChanges().stream()
                .anyMatch(changes -> changes.brood().equals(brood));
    }

    private Deed undoing(Deed deed) {
        List<LedgerEntry> reversals = deed.content().entries().stream()
                .map(entry -> entry.reversal(ids.get()))
                .toList();
        Deed.Summary summary = new Deed.Summary(
                ids.get(),
                deed.summary().brood(),
                clock.instant(),
                Texts.say("Undone: {0}", deed.summary().words()));
        List<PotChanges> pots = deed.content().potChanges().stream()
                .map(changes -> changes.reversal(ids))
                .toList();
        return new Deed(
                summary,
                Optional.of(deed.summary().id()),
                Deed.Content.ofEntries(reversals).withPotChanges(pots));
    }
}
