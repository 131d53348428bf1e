package org.moultwright.workflow;

import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.ContainerMove;
import org.moultwright.domain.PullNote;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/** Writes down that a sac was taken from its mother. A deed, undone like any other. */
public final class PullSac {
    private final BroodBook book;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public PullSac(BroodBook book, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.clock = clock;
        this.ids = ids;
    }

    /** Why a sac cannot have been taken then. */
    public static Optional<String> against(BroodRecord record, Instant at, Instant now) {
        Brood brood = record.brood();
        if (record.ledger().opened() > 0) {
            return Optional.of(Texts.say("{0} is opened already.", brood.code()));
        }
        if (at.isAfter(now)) {
            return Optional.of(Texts.say("That day is yet to come. Write it down then."));
        }
        return brood.laid()
                .filter(laid -> at.isBefore(laid.earliest()))
                .map(laid -> Texts.say("That is before the sac was laid."));
    }

    /**
     * Keeps that a sac was taken; on disk when this returns.
     *
     * @param inside the container it was put into, empty where it stays where it was
     * @throws IllegalArgumentException if it cannot be, with a sentence for the keeper
     */
    public Deed.Summary pull(String brood, Instant at, Optional<String> inside) {
        BroodRecord record = book.find(brood)
                .orElseThrow(
                        () -> new IllegalArgumentException(Texts.say("There is no brood {0} in the book.", brood)));
        against(record, at, clock.instant()).ifPresent(problem -> Require.that(false, problem));
        List<ContainerMove> moves = inside.stream()
                .map(around -> new ContainerMove(
                        brood, ContainerKind.HAMMOCK, Optional.of(new ContainerMove.Place(Optional.of(around))), at))
                .toList();
        Deed.Summary summary =
                new Deed.Summary(ids.get(), brood, clock.instant(), Texts.say("{0} taken from its mother", brood));
        SacWriting writing = new SacWriting(Optional.empty(), List.of(new PullNote(ids.get(), at)), List.of());
        book.keep(
                new Deed(summary, Optional.empty(), Deed.Content.ofMoves(moves).withSac(writing)));
        return summary;
    }
}
