package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.Stage;

class RecordRoundTest {
    private static final Instant OPENED = Instant.parse("2026-03-25T18:00:00Z");
    private static final Instant TONIGHT = Instant.parse("2026-04-09T19:41:00Z");
    private static final Account A1 = Account.tray("A1");

    private final AtomicLong nextId = new AtomicLong(100);
    private final MemoryBroodBook book = new MemoryBroodBook();
    private final InstantSource clock = InstantSource.fixed(TONIGHT);
    private final RecordRound round = new RecordRound(book, clock, this::nextId);
    private final UndoDeed undo = new UndoDeed(book, clock, this::nextId);

    @BeforeEach
    void openABroodOfSixty() {
        Brood brood = new Brood(
                "CC-26-A",
                "Chromatopelma cyaneopubescens",
                ZoneId.of("Europe/Lisbon"),
                Optional.empty(),
                Optional.of(OPENED),
                List.of(Stage.EGG, Stage.POSTEMBRYO, Stage.INSTAR1, Stage.INSTAR2),
                27,
                Optional.empty());
        BroodRecord empty = BroodRecord.of(brood);
        Ledger ledger =
                Ledger.of(List.of(LedgerEntry.of(nextId(), OPENED, Account.SAC, A1, Stage.EGG, 60, Cause.OPENED)));
        book.takeIn(
                new BroodRecord(
                        brood,
                        ledger,
                        empty.checks(),
                        List.of(),
                        List.of(),
                        List.of(),
                        Map.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of()),
                sink -> {});
    }

    @Test
    void aBalancedSheetMovesTheDeadAndKeepsTheLook() {
        RoundSheet sheet = sheet(Map.of(Stage.POSTEMBRYO, new Look.Full(57), Stage.INSTAR1, new Look.Full(1)), 2);
        round.save(sheet, Optional.empty());
        assertThat(stored().ledger().balance(A1)).isEqualTo(58);
        assertThat(stored().ledger().balance(Account.DEAD)).isEqualTo(2);
        assertThat(stored().checks())
                .singleElement()
                .satisfies(check -> assertThat(check.looks()).isEqualTo(sheet.looks()));
        assertThat(stored().mould())
                .singleElement()
                .satisfies(mould -> assertThat(mould.lost()).isEqualTo(2));
        assertThat(stored().care())
                .extracting(care -> care.what() + "|" + care.note())
                .containsExactly("watered|", "noted|lid vented");
    }

    @Test
    void anUnexplainedSheetIsKeptOnlyWithAnAnswer() {
        RoundSheet sheet = sheet(Map.of(Stage.POSTEMBRYO, new Look.Full(55)), 2);
        assertThat(RecordRound.balance(stored().ledger(), sheet).unexplained()).isEqualTo(3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> round.save(sheet, Optional.empty()))
                .withMessageContaining("3 animals");
        assertThat(stored().checks()).isEmpty();
    }

    @Test
    void goneAnimalsAreMissing() {
        round.save(sheet(Map.of(Stage.POSTEMBRYO, new Look.Full(55)), 2), Optional.of(Balance.Answer.GONE));
        assertThat(stored().ledger().balance(Account.MISSING)).isEqualTo(3);
        assertThat(stored().ledger().balance(A1)).isEqualTo(55);
    }

    @Test
    void anEarlierMiscountChangesWhatWasOpened() {
        round.save(sheet(Map.of(Stage.POSTEMBRYO, new Look.Full(61)), 2), Optional.of(Balance.Answer.EARLIER_MISCOUNT));
        assertThat(stored().ledger().opened()).isEqualTo(63);
        assertThat(stored().ledger().balance(A1)).isEqualTo(61);
    }

    @Test
    void moreThanExpectedCannotBeGone() {
        RoundSheet sheet = sheet(Map.of(Stage.POSTEMBRYO, new Look.Full(61)), 2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> round.save(sheet, Optional.of(Balance.Answer.GONE)))
                .withMessageContaining("cannot be gone");
    }

    @Test
    void undoTakesBackTheWholeSheetAndNothingElse() {
        BroodRecord before = stored();
        round.save(sheet(Map.of(Stage.POSTEMBRYO, new Look.Full(55)), 2), Optional.of(Balance.Answer.GONE));
        assertThat(undo.undo()).get().extracting(Deed.Summary::words).isEqualTo("A1 looked at");
        assertThat(stored().ledger().standing()).isEqualTo(before.ledger().standing());
        assertThat(stored().ledger().entries()).hasSize(1 + 2 * 2);
        assertThat(stored().withReadings(Map.of()).checks()).isEqualTo(before.checks());
        assertThat(stored().care()).isEmpty();
        assertThat(undo.undo()).isEmpty();
    }

    private static RoundSheet sheet(Map<Stage, Look> looks, int lostToMould) {
        return new RoundSheet(
                "CC-26-A",
                "A1",
                TONIGHT,
                looks,
                List.of(new RoundSheet.Loss(Stage.POSTEMBRYO, Cause.MOULD, lostToMould)),
                Optional.of(new RoundSheet.Mould("shells", "speck", "cut out")),
                Set.of("watered"),
                "lid vented");
    }

    private BroodRecord stored() {
        return book.find("CC-26-A").orElseThrow();
    }

    private UUID nextId() {
        return new UUID(0, nextId.incrementAndGet());
    }
}
