package org.moultwright.workflow;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
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
import org.moultwright.domain.Pot;
import org.moultwright.domain.Require;
import org.moultwright.domain.Stage;
import org.moultwright.domain.code.TakenCodes;
import org.moultwright.language.Texts;

/** Writes into the book how many animals really went into pots, one pot each, and how many did not live to. */
public final class PotSlings {
    private final BroodBook book;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public PotSlings(BroodBook book, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.clock = clock;
        this.ids = ids;
    }

    /**
     * One sitting at the potting bench, whatever the broods.
     *
     * @param at when the animals went into their pots
     * @param outcomes what became of those taken, tray by tray and size by size
     */
    public record Potting(Instant at, List<Outcome> outcomes) {
        public Potting {
            outcomes = List.copyOf(outcomes);
            Require.that(
                    outcomes.stream().anyMatch(outcome -> outcome.taken() > 0),
                    "outcomes takes 0 animals but must take at least 1");
        }

        public int potted() {
            return outcomes.stream().mapToInt(outcome -> outcome.pots().size()).sum();
        }
    }

    /**
     * What became of the animals taken from one tray for pots of one size.
     *
     * @param brood the brood's code
     * @param potSize how large the pots are, in the keeper's words, possibly empty
     * @param pots the labels of the pots they went into, one pot an animal
     * @param lost how many died or were lost on the way, at least 0
     */
    public record Outcome(String brood, String tray, String potSize, List<PotLabel> pots, int lost) {
        public Outcome {
            pots = List.copyOf(pots);
            Require.atLeast("lost", lost, 0);
        }

        public int taken() {
            return pots.size() + lost;
        }
    }

    /**
     * Keeps a potting, one deed however many broods; it is on disk when this returns.
     *
     * @throws IllegalArgumentException if a brood is unknown, a tray holds fewer animals than were taken, or a code is
     *     already on another pot
     */
    public Deed.Summary save(Potting potting) {
        requireNewCodes(potting);
        Map<String, List<Outcome>> byBrood = new LinkedHashMap<>();
        potting.outcomes()
                .forEach(outcome -> byBrood.computeIfAbsent(outcome.brood(), none -> new ArrayList<>())
                        .add(outcome));
        List<PotChanges> changes = byBrood.entrySet().stream()
                .map(brood -> changes(brood.getKey(), brood.getValue(), potting.at()))
                .toList();
        Optional<PotChanges> only = changes.size() == 1 ? Optional.of(changes.get(0)) : Optional.empty();
        Deed.Summary summary = new Deed.Summary(
                ids.get(), only.map(PotChanges::brood), clock.instant(), Texts.say("{0} potted", potting.potted()));
        Deed.Content content = only.map(
                        ofBrood -> new Deed.Content(ofBrood.entries(), List.of(), List.of(), List.of(), ofBrood.pots()))
                .orElseGet(() -> Deed.Content.ofPots(changes));
        book.keep(new Deed(summary, Optional.empty(), content));
        return summary;
    }

    private PotChanges changes(String brood, List<Outcome> outcomes, Instant at) {
        BroodRecord record = book.find(brood)
                .orElseThrow(() -> new IllegalArgumentException("brood '" + brood + "' is not in the book"));
        Stage stage = record.brood().lastStage();
        List<LedgerEntry> entries = new ArrayList<>();
        List<Pot> pots = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            int potted = outcome.pots().size();
            addEntry(entries, at, outcome.tray(), Account.POTTED, stage, potted, Cause.POTTED);
            addEntry(entries, at, outcome.tray(), Account.DEAD, stage, outcome.lost(), Cause.LOST_IN_POTTING);
            outcome.pots()
                    .forEach(label ->
                            pots.add(new Pot(label.code(), outcome.tray(), at, label.line(), outcome.potSize())));
        }
        return new PotChanges(brood, pots, List.of(), entries);
    }

    private void addEntry(
            List<LedgerEntry> entries, Instant at, String tray, Account to, Stage stage, int count, Cause cause) {
        if (count > 0) {
            entries.add(LedgerEntry.of(ids.get(), at, Account.tray(tray), to, stage, count, cause));
        }
    }

    private void requireNewCodes(Potting potting) {
        TakenCodes taken = TakenCodes.of(book.broods().stream()
                .flatMap(brood -> book.find(brood.code()).stream())
                .flatMap(record -> record.pots().stream())
                .map(Pot::code)
                .toList());
        potting.outcomes().stream()
                .flatMap(outcome -> outcome.pots().stream())
                .forEach(label -> Require.that(
                        taken.take(label.code()), "code '" + label.code() + "' is already on another pot"));
    }
}
