package org.moultwright.workflow;

import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.ContainerMove;
import org.moultwright.domain.ContainerMove.Place;
import org.moultwright.domain.Require;
import org.moultwright.domain.Shelf;
import org.moultwright.language.Texts;

/**
 * Adds, moves and puts away containers: each a deed of the room, undone like any other. What a method cannot do it
 * refuses with an {@link IllegalArgumentException} whose message is a sentence for the keeper.
 */
public final class ArrangeShelf {
    private final BroodBook book;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public ArrangeShelf(BroodBook book, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.clock = clock;
        this.ids = ids;
    }

    /** Stands a container on the shelf that was not there; on disk when this returns. */
    public Deed.Summary add(String code, ContainerKind kind, Optional<String> inside) {
        Instant now = clock.instant();
        ShelfAt there = ShelfAt.of(book, book.shelf(), now);
        refuse(ShelfRules.againstCode(there, code));
        refuse(ShelfRules.againstPlace(there, code, kind, inside));
        return keep(
                inside.map(around -> Texts.say("{0} added in {1}", code, around))
                        .orElseGet(() -> Texts.say("{0} added", code)),
                new ContainerMove(code, kind, Optional.of(new Place(inside)), now));
    }

    /**
     * Moves a container with all that stands in it, until it is known to have gone elsewhere; on disk when this
     * returns.
     *
     * @param inside the container around it from then on, empty for none
     * @param at when, not ahead of now
     */
    public Deed.Summary move(String code, Optional<String> inside, Instant at) {
        Instant now = clock.instant();
        Require.that(!at.isAfter(now), Texts.say("That time is yet to come. Move it then."));
        Shelf shelf = book.shelf();
        ShelfAt then = ShelfAt.of(book, shelf, at);
        refuse(againstTime(then, ShelfAt.of(book, shelf, now), Stream.concat(Stream.of(code), inside.stream())));
        Standing moved = find(then, code);
        refuse(ShelfRules.againstPlace(then, code, moved.kind(), inside));
        Require.that(
                moved.since().isEmpty() || !moved.inside().equals(inside),
                inside.map(around -> Texts.say(
                                "{0} stands in {1} then already. Choose another place or time.", code, around))
                        .orElse(Texts.say("{0} stands in nothing then already. Choose another place or time.", code)));
        ContainerMove move = new ContainerMove(code, moved.kind(), Optional.of(new Place(inside)), at);
        refuse(ShelfRules.againstLaterCircle(shelf, move));
        return keep(
                inside.map(around -> Texts.say("{0} moved into {1}", code, around))
                        .orElse(Texts.say("{0} taken out", code)),
                move);
    }

    /** Takes an empty container off the shelf; on disk when this returns. Its past stays. */
    public Deed.Summary putAway(String code) {
        Instant now = clock.instant();
        Standing standing = find(ShelfAt.of(book, book.shelf(), now), code);
        refuse(ShelfRules.againstPuttingAway(standing));
        return keep(Texts.say("{0} put away", code), new ContainerMove(code, standing.kind(), Optional.empty(), now));
    }

    /** What stands on the shelf now may not have stood there then. */
    private static Optional<String> againstTime(ShelfAt then, ShelfAt now, Stream<String> codes) {
        return codes.filter(code -> then.find(code).isEmpty() && now.find(code).isPresent())
                .findFirst()
                .map(code -> Texts.say("{0} was not on the shelf yet then. Choose a later time.", code));
    }

    private static Standing find(ShelfAt shelf, String code) {
        return shelf.find(code)
                .orElseThrow(() -> new IllegalArgumentException(
                        Texts.say("{0} is not on the shelf any more. Choose another container.", code)));
    }

    private static void refuse(Optional<String> problem) {
        problem.ifPresent(sentence -> Require.that(false, sentence));
    }

    private Deed.Summary keep(String words, ContainerMove move) {
        Deed.Summary summary = new Deed.Summary(ids.get(), Optional.empty(), clock.instant(), words);
        book.keep(new Deed(summary, Optional.empty(), Deed.Content.ofMoves(List.of(move))));
        return summary;
    }
}
