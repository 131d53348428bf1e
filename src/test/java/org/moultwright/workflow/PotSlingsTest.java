package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.PotSlings.Outcome;
import org.moultwright.workflow.PotSlings.Potting;

class PotSlingsTest {
    private static final String BROOD = "CC-26-A";
    private static final Instant NOW = Instant.parse("2026-05-05T20:41:00Z");

    private final MemoryBroodBook book = new MemoryBroodBook();
    private final InstantSource clock = InstantSource.fixed(NOW);
    private final PotSlings potSlings = new PotSlings(book, clock, UUID::randomUUID);

    @BeforeEach
    void openABrood() {
        Brood brood = new Brood(
                BROOD,
                "Chromatopelma cyaneopubescens",
                ZoneOffset.UTC,
                Optional.empty(),
                Optional.empty(),
                List.of(Stage.values()),
                27,
                Optional.empty());
        BroodRecord empty = BroodRecord.of(brood);
        book.takeIn(empty, ReadingSource.of(empty));
        LedgerEntry opened = LedgerEntry.of(
                UUID.randomUUID(),
                NOW.minusSeconds(60),
                Account.SAC,
                Account.tray("A1"),
                Stage.INSTAR2,
                5,
                Cause.OPENED);
        book.keep(new Deed(
                new Deed.Summary(UUID.randomUUID(), BROOD, NOW, "opened"),
                Optional.empty(),
                Deed.Content.ofEntries(List.of(opened))));
    }

    @Test
    void animalsLeaveTheirTrayForPotsAndTheDead() {
        Deed.Summary summary = potSlings.save(potting(new Outcome(BROOD, "A1", "", labels("P1", "P2"), 1)));
        BroodRecord record = record();
        assertThat(record.ledger().balance(Account.tray("A1"))).isEqualTo(2);
        assertThat(record.ledger().balance(Account.POTTED)).isEqualTo(2);
        assertThat(record.ledger().balance(Account.DEAD)).isEqualTo(1);
        assertThat(record.pots())
                .containsExactly(
                        new Pot("P1", "A1", NOW, "sling 5 May 26"), new Pot("P2", "A1", NOW, "sling 5 May 26"));
        assertThat(summary.words()).isEqualTo("2 potted");
    }

    @Test
    void isUndoneWhole() {
        potSlings.save(potting(new Outcome(BROOD, "A1", "", labels("P1", "P2"), 1)));
        new UndoDeed(book, clock, UUID::randomUUID).undo();
        assertThat(record().ledger().balance(Account.tray("A1"))).isEqualTo(5);
        assertThat(record().ledger().balance(Account.POTTED)).isZero();
        assertThat(record().pots()).isEmpty();
    }

    @Test
    void takesNoMoreThanThereAre() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> potSlings.save(potting(new Outcome(BROOD, "A1", "", labels("P1"), 5))))
                .withMessageContaining("A1");
        assertThat(record().pots()).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> potting(new Outcome(BROOD, "A1", "", List.of(), 0)));
    }

    @Test
    void givesNoCodeTwice() {
        potSlings.save(potting(new Outcome(BROOD, "A1", "", labels("P1"), 0)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> potSlings.save(potting(new Outcome(BROOD, "A1", "", labels("P1"), 0))))
                .withMessage("code 'P1' is already on another pot");
        assertThat(record().ledger().balance(Account.POTTED)).isEqualTo(1);
    }

    private static Potting potting(Outcome outcome) {
        return new Potting(NOW, List.of(outcome));
    }

    private static List<PotLabel> labels(String... codes) {
        return List.of(codes).stream()
                .map(code -> new PotLabel(code, "Chromatopelma cyaneopubescens", "sling 5 May 26"))
                .toList();
    }

    private BroodRecord record() {
        return book.find(BROOD).orElseThrow();
    }
}
