package org.moultwright.workflow;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.PotEvent;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.domain.PotLife;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/**
 * Writes down what happened to the animals of many pots at one go, whatever their broods: one deed, undone whole. Deaths
 * and hand-overs move as many animals in the ledgers. What cannot be is refused with an
 * {@link IllegalArgumentException} whose message is a sentence for the keeper.
 */
public final class TendPots {
    private final BroodBook book;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public TendPots(BroodBook book, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.clock = clock;
        this.ids = ids;
    }

    /** A pot, by its brood and its code. */
    public record Chosen(String brood, String pot) {}

    /**
     * What was written down.
     *
     * @param events one for each animal it concerned
     * @param passedOver how many of those chosen it did not, as they were dead or handed over
     */
    public record Tended(Deed.Summary summary, List<PotEvent> events, int passedOver) {
        public Tended {
            events = List.copyOf(events);
        }
    }

    /**
     * Keeps that the same happened to all of these that are alive; it is on disk when this returns.
     *
     * @param at when, not ahead of now
     * @param note further words, possibly empty
     */
    public Tended tend(Collection<Chosen> chosen, What what, Instant at, String note) {
        Instant now = clock.instant();
        Require.that(!chosen.isEmpty(), Texts.say("Choose a pot first."));
        Require.that(!at.isAfter(now), Texts.say("That day is yet to come. Choose today or an earlier one."));
        Map<String, List<String>> byBrood = new LinkedHashMap<>();
        chosen.stream()
                .distinct()
                .forEach(one -> byBrood.computeIfAbsent(one.brood(), none -> new ArrayList<>())
                        .add(one.pot()));
        List<PotChanges> changes = new ArrayList<>();
        byBrood.forEach((brood, pots) -> changes.add(changes(brood, pots, what, at, note.strip())));
        changes.removeIf(one -> one.events().isEmpty());
        List<PotEvent> events =
                changes.stream().flatMap(one -> one.events().stream()).toList();
        int asked = byBrood.values().stream().mapToInt(List::size).sum();
        Require.that(!events.isEmpty(), Texts.say("Nothing to write down: what you chose is dead or handed over."));
        Deed.Summary summary = new Deed.Summary(ids.get(), Optional.empty(), now, words(events, what));
        book.keep(new Deed(summary, Optional.empty(), Deed.Content.ofPots(changes)));
        return new Tended(summary, events, asked - events.size());
    }

    private PotChanges changes(String brood, List<String> codes, What what, Instant at, String note) {
        BroodRecord record = book.find(brood)
                .orElseThrow(
                        () -> new IllegalArgumentException(Texts.say("There is no brood {0} in the book.", brood)));
        Map<String, PotLife> lives = new HashMap<>();
        PotLife.of(record).forEach(life -> lives.put(life.pot().code(), life));
        List<PotEvent> events = new ArrayList<>();
        for (String code : codes) {
            PotLife life = Optional.ofNullable(lives.get(code))
                    .orElseThrow(() ->
                            new IllegalArgumentException(Texts.say("There is no pot {0} in the register.", code)));
            if (life.isAlive()) {
                requirePossible(life, what, at);
                events.add(new PotEvent(ids.get(), at, code, what, note));
            }
        }
        return new PotChanges(brood, List.of(), events, entries(record, events.size(), what, at, note));
    }

    private static void requirePossible(PotLife life, What what, Instant at) {
        String code = life.pot().code();
        Require.that(
                !at.isBefore(life.pot().potted()),
                Texts.say("{0} was not in its pot yet on that day. Choose a later one.", code));
        boolean livedOn = life.events().stream().anyMatch(event -> event.at().isAfter(at));
        Require.that(
                !what.isLast() || !livedOn,
                Texts.say("{0} was still fed or seen to moult after that day. Choose a later one.", code));
    }

    private List<LedgerEntry> entries(BroodRecord record, int animals, What what, Instant at, String note) {
        if (!what.isLast() || animals == 0) {
            return List.of();
        }
        int potted = Math.min(
                record.ledger().balance(Account.POTTED), record.ledger().at(at).balance(Account.POTTED));
        Require.that(
                animals <= potted,
                Texts.say(
                        "The ledger of {0} holds {1} in pots then, so {2} cannot leave them. See its entries on Broods.",
                        record.brood().code(), potted, animals));
        return List.of(new LedgerEntry(
                ids.get(),
                at,
                Account.POTTED,
                what == What.DIED ? Account.DEAD : Account.HANDED_OVER,
                record.brood().lastStage(),
                animals,
                what == What.DIED ? Cause.DIED_IN_POT : Cause.HANDED_OVER,
                note,
                Optional.empty()));
    }

    private static String words(List<PotEvent> events, What what) {
        String done =
                switch (what) {
                    case FED -> Texts.say("fed");
                    case MOULTED -> Texts.say("moulted");
                    case DIED -> Texts.say("dead");
                    case HANDED_OVER -> Texts.say("handed over");
                };
        return events.size() == 1 ? events.get(0).pot() + " " + done : Texts.say("{0} pots {1}", events.size(), done);
    }
}
