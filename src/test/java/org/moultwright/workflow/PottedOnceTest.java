package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Pot;
import org.moultwright.domain.code.CodeFacts;
import org.moultwright.domain.code.CodePattern;
import org.moultwright.domain.code.PotCode;
import org.moultwright.domain.code.TakenCodes;
import org.moultwright.workflow.PotSlings.Outcome;
import org.moultwright.workflow.PotSlings.Potting;

/** Whatever is potted of whichever broods, and taken back: no animal is made or lost, none is potted twice, no code either. */
class PottedOnceTest {
    private static final Instant NOW = InventedPots.NOW;
    private static final List<String> BROODS = List.of("AA-26-A", "BB-26-B", "BB-25-A");
    private static final List<CodePattern> PATTERNS = List.of(
            CodePattern.STANDARD,
            new CodePattern("{yy}{brood}{nnn}"),
            new CodePattern("{yy}-{brood}{nn}"),
            new CodePattern("R-{nnn}-{tray}"));
    private static final int EACH = 60;

    @ParameterizedTest
    @ValueSource(longs = {4, 1953, 20260505})
    void animalsAndCodesAreConserved(long seed) {
        Random random = new Random(seed);
        MemoryBroodBook book = new MemoryBroodBook();
        for (String brood : BROODS) {
            BroodRecord record = InventedPots.brood(brood, prefix(brood), 2, EACH);
            book.takeIn(record, ReadingSource.of(record));
        }
        PotSlings potSlings = new PotSlings(book, () -> NOW, UUID::randomUUID);
        UndoDeed undo = new UndoDeed(book, () -> NOW, UUID::randomUUID);
        for (int sitting = 0; sitting < 40; sitting++) {
            String what = "seed %d, sitting %d".formatted(seed, sitting);
            List<Integer> before = left(book);
            Potting potting = anyPotting(random, book);
            int[] wanted = new int[BROODS.size()];
            potting.outcomes().forEach(outcome -> wanted[BROODS.indexOf(outcome.brood())] += outcome.taken());
            boolean isThere = true;
            for (int i = 0; i < wanted.length; i++) {
                isThere &= wanted[i] <= before.get(i);
            }
            try {
                Deed.Summary kept = potSlings.save(potting);
                assertThat(isThere).as(what).isTrue();
                if (random.nextInt(3) == 0) {
                    undo.undo(kept.id());
                    assertThat(left(book)).as(what).isEqualTo(before);
                }
            } catch (IllegalArgumentException tooMany) {
                assertThat(isThere).as("%s: %s", what, tooMany.getMessage()).isFalse();
                assertThat(left(book)).as(what).isEqualTo(before);
            }
            requireConserved(book, what);
        }
    }

    private static void requireConserved(BroodBook book, String what) {
        Set<String> symbols = new HashSet<>();
        for (String brood : BROODS) {
            BroodRecord record = book.find(brood).orElseThrow();
            int potted = record.ledger().balance(Account.POTTED);
            assertThat(record.pots()).as(what).hasSize(potted);
            assertThat(record.ledger().aliveInTrays() + potted + record.ledger().balance(Account.DEAD))
                    .as(what)
                    .isEqualTo(EACH + 2);
            for (Pot pot : record.pots()) {
                assertThat(symbols.add(PotCode.symbols(pot.code())))
                        .as("%s: %s twice", what, pot.code())
                        .isTrue();
                assertThat(PotCode.read(pot.code()).symbols()).as(what).isPresent();
            }
        }
    }

    private static Potting anyPotting(Random random, BroodBook book) {
        CodePattern pattern = PATTERNS.get(random.nextInt(PATTERNS.size()));
        TakenCodes taken = TakenCodes.of(BROODS.stream()
                .flatMap(brood -> book.find(brood).orElseThrow().pots().stream())
                .map(Pot::code)
                .toList());
        List<Outcome> outcomes = new ArrayList<>();
        int portions = 1 + random.nextInt(5);
        for (int i = 0; i < portions; i++) {
            String brood = BROODS.get(random.nextInt(BROODS.size()));
            String tray = "A1 " + prefix(brood);
            CodeFacts facts = CodeFacts.of(book.find(brood).orElseThrow().brood(), tray, NOW);
            List<PotLabel> labels = pattern.run(facts).next(random.nextInt(9), taken).stream()
                    .map(code -> new PotLabel(code.text(), "Invented species", ""))
                    .toList();
            outcomes.add(
                    new Outcome(brood, tray, random.nextBoolean() ? "30 ml" : "60 ml", labels, 1 + random.nextInt(2)));
        }
        return new Potting(NOW, outcomes);
    }

    private static List<Integer> left(BroodBook book) {
        return BROODS.stream()
                .map(brood -> book.find(brood).orElseThrow().ledger().balance(Account.tray("A1 " + prefix(brood))))
                .toList();
    }

    private static String prefix(String brood) {
        return brood.substring(3, 5) + brood.charAt(6);
    }
}
