package org.moultwright.workflow;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.ContainerMove;
import org.moultwright.domain.ContainerMove.Place;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Require;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;

/**
 * Moves animals between trays of one brood: some of them to another tray or a new one, or all of a tray into another.
 * Each is a deed of the brood. Broods stay apart. What cannot be is refused with an {@link IllegalArgumentException}
 * whose message is a sentence for the keeper.
 */
public final class ShareTrays {
    private final BroodBook book;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public ShareTrays(BroodBook book, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.clock = clock;
        this.ids = ids;
    }

    /**
     * Animals taken out of a tray.
     *
     * @param isNew whether a tray is to be made of the code they go to, where the keeper saw none; else one is there
     * @param counts how many of each stage
     * @param why plainly moved, or isolated
     * @param note the reason, possibly empty; never where they are isolated
     */
    public record Part(
            String brood, String from, String to, boolean isNew, Map<Stage, Integer> counts, Cause why, String note) {
        public Part {
            EnumMap<Stage, Integer> some = new EnumMap<>(Stage.class);
            counts.forEach((stage, count) -> {
                Require.that(count >= 0, Texts.say("A count is 0 or more."));
                if (count > 0) {
                    some.put(stage, count);
                }
            });
            counts = some;
        }

        public int total() {
            return counts.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    /**
     * Why so many of these stages cannot leave a tray.
     *
     * @param stage the first of which there are too many; empty where no animal was named at all
     * @param why the sentence
     */
    public record TooMany(Optional<Stage> stage, String why) {}

    private static Optional<String> against(ShelfAt shelf, Part part) {
        return againstCounts(shelf, part)
                .map(TooMany::why)
                .or(() -> againstTarget(shelf, part))
                .or(() -> againstReason(part));
    }

    /** Why the animals cannot go where they are to: no such tray, or another than the keeper saw; empty where they can. */
    public static Optional<String> againstTarget(ShelfAt shelf, Part part) {
        return againstTarget(shelf, part.brood(), part.from(), part.to())
                .or(() -> againstOther(shelf.find(part.to()).isPresent(), part));
    }

    /** Somebody else may have made, or put away, a tray of that code since the keeper wrote it. */
    private static Optional<String> againstOther(boolean isThere, Part part) {
        if (isThere != part.isNew()) {
            return Optional.empty();
        }
        return Optional.of(
                isThere
                        ? Texts.say(
                                "{0} was put on the shelf while you wrote. Choose another code, or write {0} again to put them into that tray.",
                                part.to())
                        : Texts.say(
                                "{0} was put away while you wrote. Choose another tray, or write {0} again to make a new one of that code.",
                                part.to()));
    }

    /** Why the animals counted cannot leave the tray; empty where they can. */
    public static Optional<TooMany> againstCounts(ShelfAt shelf, Part part) {
        int there = alive(shelf, part.from(), part.brood());
        if (part.total() == 0) {
            return Optional.of(new TooMany(Optional.empty(), Texts.say("Say how many of which stage.")));
        }
        if (part.total() > there) {
            return firstOver(part, stage -> there)
                    .map(stage -> new TooMany(
                            Optional.of(stage),
                            Texts.say(
                                    "{0} holds {1}; {2} cannot leave it. Write fewer.",
                                    part.from(), ShelfRules.animals(there), part.total())));
        }
        return againstStages(shelf, part, there);
    }

    /** Why animals cannot be taken without a word; empty where they can. */
    public static Optional<String> againstReason(Part part) {
        return part.why().equals(Cause.ISOLATED) && part.note().isBlank()
                ? Optional.of(Texts.say("Say why, such as: failed moult."))
                : Optional.empty();
    }

    /** Animals grow older, never younger: as many of a stage or of one before it as were seen so, or were not seen. */
    private static Optional<TooMany> againstStages(ShelfAt shelf, Part part, int there) {
        Map<Stage, Integer> seen = occupants(shelf, part.from(), part.brood())
                .map(Standing.Occupants::byStage)
                .orElse(Map.of());
        int unseen = Math.max(
                0, there - seen.values().stream().mapToInt(Integer::intValue).sum());
        return firstOver(part, stage -> upTo(stage, seen) + unseen)
                .map(stage -> new TooMany(
                        Optional.of(stage),
                        Texts.say(
                                "When it was last looked at, {0} held {1} of these stages; {2} cannot leave it. Look at it anew first if that has changed.",
                                part.from(), upTo(stage, seen) + unseen, upTo(stage, part.counts()))));
    }

    /** The first stage of which more are taken, with those before it, than there can be. */
    private static Optional<Stage> firstOver(Part part, ToIntFunction<Stage> most) {
        return Arrays.stream(Stage.values())
                .filter(stage -> upTo(stage, part.counts()) > most.applyAsInt(stage))
                .findFirst();
    }

    private static int upTo(Stage last, Map<Stage, Integer> counts) {
        return counts.entrySet().stream()
                .filter(count -> last.isAtLeast(count.getKey()))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    /** Why a brood's animals cannot go from one tray into another; a tray that is not there yet is made. */
    public static Optional<String> againstTarget(ShelfAt shelf, String brood, String from, String to) {
        if (to.equals(from)) {
            return Optional.of(Texts.say("They are in {0} already. Choose another tray.", from));
        }
        Optional<Standing> target = shelf.find(to);
        if (target.isEmpty()) {
            return ShelfRules.againstCode(shelf, to);
        }
        if (!target.get().kind().holdsBrood()) {
            return Optional.of(Texts.say(
                    "No animals live in {0} itself ({1}). Choose a tray.",
                    to, target.get().kind().word()));
        }
        if (target.get().holdsSac()) {
            return Optional.of(Texts.say("{0} holds a sac that is not opened yet. Choose another tray.", to));
        }
        return target.get().occupants().stream()
                .filter(others -> !others.brood().equals(brood))
                .findFirst()
                .map(others -> Texts.say(
                        "{0} holds animals of {1}. Broods stay apart, or nobody can tell them from each other. Choose another tray.",
                        to, others.brood()));
    }

    /** Takes a part of a tray to another, which is made and stood beside it where it is new; on disk when this returns. */
    public Deed.Summary split(Part part) {
        Instant now = clock.instant();
        ShelfAt shelf = ShelfAt.of(book, book.shelf(), now);
        refuse(against(shelf, part));
        List<LedgerEntry> entries = new ArrayList<>();
        part.counts()
                .forEach((stage, count) ->
                        entries.add(entry(now, part.from(), part.to(), stage, count, part.why(), part.note())));
        List<ContainerMove> moves = part.isNew() ? List.of(beside(shelf, part, now)) : List.of();
        String verb = part.why().equals(Cause.ISOLATED) ? Texts.say("isolated in") : Texts.say("moved to");
        return keep(
                part.brood(),
                Texts.say("{0} of {1} {2} {3}", part.total(), part.from(), verb, part.to()),
                Deed.Content.ofEntries(entries).withMoves(moves));
    }

    /**
     * Puts all animals of a tray into another; on disk when this returns.
     *
     * @param putAway whether the tray left empty is put away
     */
    public Deed.Summary merge(String brood, String from, String into, boolean putAway) {
        Instant now = clock.instant();
        ShelfAt shelf = ShelfAt.of(book, book.shelf(), now);
        Require.that(
                shelf.find(into).isPresent(),
                Texts.say("There is no '{0}' on the shelf. Choose one from the list.", into));
        refuse(againstTarget(shelf, brood, from, into));
        Standing source = shelf.find(from)
                .orElseThrow(() -> new IllegalArgumentException(
                        Texts.say("{0} is not on the shelf any more. Choose another tray.", from)));
        Map<Stage, Integer> stages = source.occupantsOf(brood)
                .map(occupants -> wholly(occupants, record(brood)))
                .orElse(Map.of());
        Require.that(
                !stages.isEmpty(), Texts.say("{0} holds no animals of {1}. Choose a tray that does.", from, brood));
        List<LedgerEntry> entries = new ArrayList<>();
        stages.forEach((stage, count) -> entries.add(entry(now, from, into, stage, count, Cause.MOVED, "")));
        boolean leaves =
                putAway && source.occupants().size() == 1 && source.since().isPresent();
        List<ContainerMove> moves =
                leaves ? List.of(new ContainerMove(from, source.kind(), Optional.empty(), now)) : List.of();
        return keep(
                brood,
                Texts.say("{0} joined with {1}", from, into),
                Deed.Content.ofEntries(entries).withMoves(moves));
    }

    /** Every animal by stage; where the last look did not see them all, the rest are of the stage most are in. */
    private static Map<Stage, Integer> wholly(Standing.Occupants occupants, BroodRecord record) {
        EnumMap<Stage, Integer> stages = new EnumMap<>(Stage.class);
        int left = occupants.alive();
        Stage commonest = record.brood().stages().get(0);
        int most = 0;
        for (Stage stage : Stage.values()) {
            int count = Math.min(left, occupants.byStage().getOrDefault(stage, 0));
            left -= count;
            if (count > 0) {
                stages.put(stage, count);
            }
            if (count > most) {
                most = count;
                commonest = stage;
            }
        }
        if (left > 0) {
            stages.merge(commonest, left, Integer::sum);
        }
        return stages;
    }

    private static ContainerMove beside(ShelfAt shelf, Part part, Instant now) {
        Optional<String> around = shelf.find(part.from()).flatMap(Standing::inside);
        return new ContainerMove(part.to(), ContainerKind.TRAY, Optional.of(new Place(around)), now);
    }

    private static int alive(ShelfAt shelf, String tray, String brood) {
        return occupants(shelf, tray, brood).map(Standing.Occupants::alive).orElse(0);
    }

    private static Optional<Standing.Occupants> occupants(ShelfAt shelf, String tray, String brood) {
        return shelf.find(tray).flatMap(standing -> standing.occupantsOf(brood));
    }

    private BroodRecord record(String brood) {
        return book.find(brood)
                .orElseThrow(
                        () -> new IllegalArgumentException(Texts.say("There is no brood {0} in the book.", brood)));
    }

    private LedgerEntry entry(Instant at, String from, String to, Stage stage, int count, Cause cause, String note) {
        return new LedgerEntry(
                ids.get(),
                at,
                Account.tray(from),
                Account.tray(to),
                stage,
                count,
                cause,
                note.strip(),
                Optional.empty());
    }

    private static void refuse(Optional<String> problem) {
        problem.ifPresent(sentence -> Require.that(false, sentence));
    }

    private Deed.Summary keep(String brood, String words, Deed.Content content) {
        Deed.Summary summary = new Deed.Summary(ids.get(), brood, clock.instant(), words);
        book.keep(new Deed(summary, Optional.empty(), content));
        return summary;
    }
}
