package org.moultwright.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReconciliationTest {
    private static final Instant START = Instant.parse("2026-03-25T20:00:00Z");
    private static final Account A1 = Account.tray("A1");

    private final AtomicLong lastId = new AtomicLong();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void anyRowsGiveALedgerThatKeepsThemAll(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<LedgerEntry> rows = new ArrayList<>();
        List<Check> checks = new ArrayList<>();
        List<Account> accounts = List.of(
                Account.SAC, A1, Account.tray("A2"), Account.DEAD, Account.MISSING, Account.POTTED, Account.INFERTILE);
        for (int i = random.nextInt(60); i > 0; i--) {
            int from = random.nextInt(accounts.size());
            int to = (from + 1 + random.nextInt(accounts.size() - 1)) % accounts.size();
            rows.add(move(random.nextInt(20), accounts.get(from), accounts.get(to), 1 + random.nextInt(60)));
            checks.add(count(random.nextInt(20), "A" + (1 + random.nextInt(2)), random.nextInt(90)));
        }
        Reconciliation reconciled = Reconciliation.of(rows, checks, this::found);
        assertThat(reconciled.ledger().entries())
                .containsAll(rows)
                .hasSize(rows.size() + reconciled.added().size());
        assertThat(reconciled.added()).allSatisfy(entry -> {
            assertThat(entry.from()).isEqualTo(Account.SAC);
            assertThat(entry.cause()).isEqualTo(Cause.EARLIER_MISCOUNT);
        });
        Reconciliation again = Reconciliation.of(reconciled.ledger().entries(), checks, this::found);
        assertThat(again.added()).as("nothing is left to add").isEmpty();
        assertThat(again.questions()).isEqualTo(reconciled.questions());
    }

    @Test
    void aTrayThatHoldsMoreThanWerePutInGetsTheRestFromTheSac() {
        Reconciliation reconciled = Reconciliation.of(
                List.of(move(0, Account.SAC, A1, 57)), List.of(count(1, "A1", 58), count(2, "A1", 58)), this::found);
        assertThat(reconciled.added()).singleElement().satisfies(entry -> {
            assertThat(entry.at()).isEqualTo(day(1));
            assertThat(entry.count()).isEqualTo(1);
        });
        assertThat(reconciled.questions()).isEmpty();
    }

    @Test
    void aCountThatALaterOneTakesBackIsOnlyAQuestion() {
        Reconciliation reconciled = Reconciliation.of(
                List.of(move(0, Account.SAC, A1, 57)), List.of(count(1, "A1", 60), count(2, "A1", 57)), this::found);
        assertThat(reconciled.added()).isEmpty();
        assertThat(reconciled.questions()).containsExactly(new OpenQuestion("A1", day(1), 57, 60));
    }

    @Test
    void animalsMissingFromACountAreAQuestionAndNoEntry() {
        Reconciliation reconciled =
                Reconciliation.of(List.of(move(0, Account.SAC, A1, 57)), List.of(count(1, "A1", 55)), this::found);
        assertThat(reconciled.added()).isEmpty();
        assertThat(reconciled.questions()).containsExactly(new OpenQuestion("A1", day(1), 57, 55));
    }

    @Test
    void moreTakenOutThanWerePutInComesFromTheSac() {
        Reconciliation reconciled = Reconciliation.of(
                List.of(move(0, Account.SAC, A1, 5), move(1, A1, Account.DEAD, 7)), List.of(), this::found);
        assertThat(reconciled.added()).singleElement().satisfies(entry -> {
            assertThat(entry.to()).isEqualTo(A1);
            assertThat(entry.count()).isEqualTo(2);
        });
    }

    private LedgerEntry found(Instant at, Account in, Stage stage, int count) {
        return LedgerEntry.of(nextId(), at, Account.SAC, in, stage, count, Cause.EARLIER_MISCOUNT);
    }

    private LedgerEntry move(int day, Account from, Account to, int count) {
        return LedgerEntry.of(nextId(), day(day), from, to, Stage.EGG, count, Cause.UNKNOWN);
    }

    private Check count(int day, String tray, int count) {
        return new Check(nextId(), tray, day(day), Map.of(Stage.EGG, new Look.Full(count)));
    }

    private UUID nextId() {
        return new UUID(0, lastId.incrementAndGet());
    }

    private static Instant day(int day) {
        return START.plus(Duration.ofDays(day));
    }
}
