package org.moultwright.workflow;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Require;
import org.moultwright.domain.Stage;
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
     * One sitting at the potting bench, for one brood.
     *
     * @param brood the brood's code
     * @param at when the animals went into their pots
     * @param outcomes what became of those taken, tray by tray
     */
    public record Potting(String brood, Instant at, List<Outcome> outcomes) {
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
     * What became of the animals taken from one tray.
     *
     * @param potSize how large the pots are, in the keeper's words, possibly empty
     * @param pots the labels of the pots they went into, one pot an animal
     * @param lost how many died or were lost on the way, at least 0
     */
    public record Outcome(String tray, String potSize, List<PotLabel> pots, int lost) {
        public Outcome {
            pots = List.copyOf(pots);
            Require.atLeast("lost", lost, 0);
        }

        /** Of pots whose size nobody says. */
        public Outcome(String tray, List<PotLabel> pots, int lost) {
            this(tray, "", pots, lost);
        }

        public int taken() {
            return pots.size() + lost;
        }
    }

    /**
     * Keeps a potting; it is on disk when this returns.
     *
     * @throws IllegalArgumentException if the brood is unknown, a tray holds fewer animals than were taken, or
     *     a code is already on another pot
     */
    public Deed.Summary save(Potting potting) {
        BroodRecord record = book.find(potting.brood())
                .orElseThrow(() -> new IllegalArgumentException("brood '" + potting.brood() + "' is not in the book"));
        requireNewCodes(potting);
        Stage stage = record.brood().lastStage();
        List<LedgerEntry> entries = new ArrayList<>();
        List<Pot> pots = new ArrayList<>();
        for (Outcome outcome : potting.outcomes()) {
            int potted = outcome.pots().size();
            addEntry(entries, potting.at(), outcome.tray(), Account.POTTED, stage, potted, Cause.POTTED);
            addEntry(entries, potting.at(), outcome.tray(), Account.DEAD, stage, outcome.lost(), Cause.LOST_IN_POTTING);
            outcome.pots()
                    .forEach(label -> pots.add(
                            new Pot(label.code(), outcome.tray(), potting.at(), label.line(), outcome.potSize())));
        }
        Deed.Summary summary = new Deed.Summary(
                ids.get(), potting.brood(), clock.instant(), Texts.say("{0} potted", potting.potted()));
        book.keep(
                new Deed(summary, Optional.empty(), new Deed.Content(entries, List.of(), List.of(), List.of(), pots)));
        return summary;
    }

    private void addEntry(
            List<LedgerEntry> entries, Instant at, String tray, Account to, Stage stage, int count, Cause cause) {
        if (count > 0) {
            entries.add(LedgerEntry.of(ids.get(), at, Account.tray(tray), to, stage, count, cause));
        }
    }

    private void requireNewCodes(Potting potting) {
        Set<String> taken = book.broods().stream()
                .flatMap(brood -> book.find(brood.code()).stream())
                .flatMap(record -> record.pots().stream())
                .map(Pot::code)
                .collect(Collectors.toCollection(HashSet::new));
        potting.outcomes().stream()
                .flatMap(outcome -> outcome.pots().stream())
                .forEach(label ->
                        Require.that(taken.add(label.code()), "code '" + label.code() + "' is already on another pot"));
    }
}
