package org.moultwright.workflow;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.ContainerMove;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.PullNote;
import org.moultwright.domain.Require;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;

/**
 * Opens a sac: what was in it goes into trays or is put aside, and the brood's ledger begins. All of it is one deed,
 * undone whole. What cannot be is refused with an {@link IllegalArgumentException} whose message is a sentence.
 */
public final class OpenSac {
    private final BroodBook book;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public OpenSac(BroodBook book, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.clock = clock;
        this.ids = ids;
    }

    /** Why a brood cannot be opened. */
    public static Optional<String> against(BroodRecord record) {
        return record.ledger().opened() > 0
                ? Optional.of(Texts.say(
                        "{0} is opened already. More that turned up is written in the round.",
                        record.brood().code()))
                : Optional.empty();
    }

    /** Why a brood cannot have been opened then. */
    public static Optional<String> against(BroodRecord record, Instant at, Instant now) {
        Brood brood = record.brood();
        if (at.isAfter(now)) {
            return Optional.of(Texts.say("That day is yet to come. Write it down then."));
        }
        if (brood.laid().filter(laid -> at.isBefore(laid.earliest())).isPresent()) {
            return Optional.of(Texts.say("That is before the sac was laid."));
        }
        return against(record)
                .or(() -> brood.pulled()
                        .filter(at::isBefore)
                        .map(pulled -> Texts.say(
                                "{0} was taken from its mother after that. Write a later day.", brood.code())));
    }

    /** Why what stands on the shelf now cannot have been opened into then. */
    private static Optional<String> against(Opening opening, ShelfAt then, ShelfAt now) {
        return Stream.concat(opening.trays().stream().map(SacTray::code), opening.inside().stream())
                .filter(code -> then.find(code).isEmpty() && now.find(code).isPresent())
                .findFirst()
                .map(code ->
                        Texts.say("{0} was not on the shelf yet then. Write a later day, or choose another.", code))
                .or(() -> now.find(opening.brood())
                        .flatMap(Standing::since)
                        .filter(since -> since.isAfter(then.at()))
                        .map(since -> Texts.say(
                                "{0} was moved on the shelf after that. Write a later day.", opening.brood())));
    }

    /** Keeps an opening of this moment; on disk when this returns. */
    public Deed.Summary open(Opening opening) {
        return open(opening, clock.instant());
    }

    /** Keeps an opening of an earlier moment, or of this one; on disk when this returns. */
    public Deed.Summary open(Opening opening, Instant at) {
        Instant now = clock.instant();
        BroodRecord record = book.find(opening.brood())
                .orElseThrow(() -> new IllegalArgumentException(Texts.say("There is no brood {0}.", opening.brood())));
        refuse(against(record, at, now));
        ShelfAt standing = ShelfAt.of(book, book.shelf(), now);
        ShelfAt shelf = ShelfAt.of(book, book.shelf(), at);
        refuse(against(opening, shelf, standing));
        opening.trays().forEach(tray -> refuse(ShareTrays.againstTarget(standing, opening.brood(), "", tray.code())));
        opening.trays().forEach(tray -> refuse(ShareTrays.againstTarget(shelf, opening.brood(), "", tray.code())));
        Deed.Summary summary =
                new Deed.Summary(ids.get(), opening.brood(), now, Texts.say("{0} opened", opening.brood()));
        boolean isPulledNow = record.brood().pulled().isEmpty();
        List<PullNote> pulls = isPulledNow ? List.of(new PullNote(ids.get(), at)) : List.of();
        Deed.Content content =
                new Deed.Content(entries(opening, at), checks(opening, at), List.of(), List.of(), List.of());
        book.keep(new Deed(
                summary,
                Optional.empty(),
                content.withMoves(moves(opening, shelf, at))
                        .withSac(new SacWriting(Optional.empty(), pulls, List.of()))));
        return summary;
    }

    private List<LedgerEntry> entries(Opening opening, Instant at) {
        List<LedgerEntry> entries = new ArrayList<>();
        Cause cause = opening.estimate().isPresent() ? Cause.ESTIMATED : Cause.OPENED;
        for (SacTray tray : opening.trays()) {
            tray.counts()
                    .forEach((stage, count) -> entries.add(entry(
                            at,
                            Account.tray(tray.code()),
                            stage,
                            count,
                            cause,
                            opening.estimate().orElse(""))));
        }
        opening.aside().forEach((aside, count) -> entries.add(aside(at, aside, count)));
        return entries;
    }

    private LedgerEntry aside(Instant at, Aside aside, int count) {
        return switch (aside) {
            case INFERTILE -> entry(at, Account.INFERTILE, Stage.EGG, count, Cause.INFERTILE, "");
            case FUSED -> entry(at, Account.DEAD, Stage.EGG, count, Cause.FUSED, "");
            case MOULDY -> entry(at, Account.DEAD, Stage.EGG, count, Cause.MOULD, "");
            case GONE -> entry(at, Account.MISSING, Stage.EGG, count, Cause.EATEN_OR_LOST, "");
        };
    }

    private LedgerEntry entry(Instant at, Account to, Stage stage, int count, Cause cause, String note) {
        return new LedgerEntry(ids.get(), at, Account.SAC, to, stage, count, cause, note, Optional.empty());
    }

    /** An estimate is no look: only what was counted is. */
    private List<Check> checks(Opening opening, Instant at) {
        return opening.estimate().isPresent()
                ? List.of()
                : opening.trays().stream().map(tray -> check(at, tray)).toList();
    }

    private Check check(Instant at, SacTray tray) {
        Map<Stage, Look> looks = new EnumMap<>(Stage.class);
        tray.counts().forEach((stage, count) -> looks.put(stage, new Look.Full(count)));
        return new Check(ids.get(), tray.code(), at, looks);
    }

    /** Trays that were not there are stood up, and where the sac was is no place any more. */
    private static List<ContainerMove> moves(Opening opening, ShelfAt shelf, Instant at) {
        List<ContainerMove> moves = new ArrayList<>();
        opening.trays().stream()
                .filter(tray -> shelf.find(tray.code()).isEmpty())
                .map(tray -> new ContainerMove(
                        tray.code(), ContainerKind.TRAY, Optional.of(new ContainerMove.Place(opening.inside())), at))
                .forEach(moves::add);
        shelf.find(opening.brood())
                .filter(place -> place.since().isPresent() && place.contents().isEmpty())
                .filter(place ->
                        opening.trays().stream().noneMatch(tray -> tray.code().equals(place.code())))
                .ifPresent(place -> moves.add(new ContainerMove(place.code(), place.kind(), Optional.empty(), at)));
        return moves;
    }

    private static void refuse(Optional<String> problem) {
        problem.ifPresent(sentence -> Require.that(false, sentence));
    }

    /** What is put aside on opening, and where the ledger has it. */
    public enum Aside {
        INFERTILE,
        FUSED,
        MOULDY,
        /** In the sac by one count, gone by the other. */
        GONE
    }

    /**
     * What was in a sac and where it went.
     *
     * @param trays what went into each tray, at least one animal in all
     * @param aside what was put aside, in the order it is asked
     * @param estimate how the good ones were estimated, in words; empty where they were counted
     * @param inside where trays that are not there yet are stood, empty for nowhere in particular
     */
    public record Opening(
            String brood,
            List<SacTray> trays,
            Map<Aside, Integer> aside,
            Optional<String> estimate,
            Optional<String> inside) {
        public Opening {
            Require.text("brood", brood);
            trays = List.copyOf(trays);
            Require.that(
                    trays.stream().map(SacTray::code).distinct().count() == trays.size(),
                    Texts.say("A tray stands twice."));
            Require.that(!trays.isEmpty(), Texts.say("Put at least one animal into a tray."));
            EnumMap<Aside, Integer> some = new EnumMap<>(Aside.class);
            aside.forEach((what, count) -> {
                if (Require.atLeast("aside", count, 0) > 0) {
                    some.put(what, count);
                }
            });
            aside = some;
        }
    }

    /** What goes into one tray: at least one animal. */
    public record SacTray(String code, Map<Stage, Integer> counts) {
        public SacTray {
            Require.text("tray", code);
            EnumMap<Stage, Integer> some = new EnumMap<>(Stage.class);
            counts.forEach((stage, count) -> {
                if (Require.atLeast(stage.key(), count, 0) > 0) {
                    some.put(stage, count);
                }
            });
            Require.that(!some.isEmpty(), Texts.say("Tray {0} holds no animal.", code));
            counts = some;
        }
    }
}
