package org.moultwright.workflow;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.domain.Brood;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.ContainerMove;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Require;
import org.moultwright.domain.RunUpEvent;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;

/**
 * Writes down a sac that is not opened yet, so that it is a brood from then on and has its dates. A deed, undone like
 * any other. What cannot be is refused with an {@link IllegalArgumentException} whose message is a sentence.
 */
public final class BeginBrood {
    private final BroodBook book;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public BeginBrood(BroodBook book, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.clock = clock;
        this.ids = ids;
    }

    /** Why a new brood cannot have this code. */
    public static Optional<String> againstCode(RoomView room, String code) {
        return room.brood(code).isPresent()
                ? Optional.of(taken(code))
                : ShelfRules.againstCode(ShelfAt.of(room, room.now()), code);
    }

    /** Keeps a sac as a new brood; on disk when this returns. */
    public Deed.Summary begin(Sac sac) {
        Instant now = clock.instant();
        Require.that(book.find(sac.code()).isEmpty(), taken(sac.code()));
        Brood brood = new Brood(
                sac.code(),
                sac.taxon(),
                sac.zone(),
                sac.laid(),
                sac.pulled(),
                List.of(Stage.values()),
                Brood.DEFAULT_REFERENCE_CELSIUS,
                Optional.empty());
        Instant since = sac.laid().map(InstantRange::earliest).orElse(now);
        List<RunUpEvent> runUp = sac.mother().isBlank()
                ? List.of()
                : List.of(new RunUpEvent(
                        ids.get(), since, RunUpEvent.MOTHER, sac.mother().strip()));
        Deed.Summary summary = new Deed.Summary(ids.get(), sac.code(), now, Texts.say("{0} written down", sac.code()));
        book.keep(new Deed(
                summary,
                Optional.empty(),
                Deed.Content.ofMoves(places(sac, since))
                        .withSac(new SacWriting(Optional.of(brood), List.of(), runUp))));
        return summary;
    }

    /** A container under the brood's own code says where the sac was, for the warm-days it lived. */
    private static List<ContainerMove> places(Sac sac, Instant since) {
        ContainerKind kind = sac.pulled().isPresent() ? ContainerKind.HAMMOCK : ContainerKind.BOX;
        return sac.inside().stream()
                .map(around -> new ContainerMove(
                        sac.code(), kind, Optional.of(new ContainerMove.Place(Optional.of(around))), since))
                .toList();
    }

    private static String taken(String code) {
        return Texts.say("There is a brood {0} already. Choose another code.", code);
    }

    /**
     * A sac as its keeper describes it.
     *
     * @param mother the mother's code, possibly empty
     * @param laid when it was laid, as far as is known
     * @param pulled when it was taken from the mother; empty while it is with her
     * @param inside the container it is in, with the mother or without; empty where nobody wrote that down
     */
    public record Sac(
            String code,
            String taxon,
            ZoneId zone,
            String mother,
            Optional<InstantRange> laid,
            Optional<Instant> pulled,
            Optional<String> inside) {
        public Sac {
            Require.text("code", code);
            Require.text("taxon", taxon);
        }
    }
}
