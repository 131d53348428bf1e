package org.moultwright.domain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LedgerTest {
    private static final String SEEDS = "org.moultwright.domain.LedgerHistories#seeds";
    private static final Instant EVENING = Instant.parse("2026-03-25T20:00:00Z");
    private static final Account A1 = Account.tray("A1");

    @ParameterizedTest(name = "seed {0}")
    @MethodSource(SEEDS)
    void accountsAlwaysAddUpToZero(long seed) {
        List<LedgerEntry> entries = LedgerHistories.entries(seed);
        for (LedgerEntry entry : entries) {
            Ledger then = Ledger.of(entries).at(entry.at());
            assertThat(then.balances().values().stream()
                            .mapToInt(Integer::intValue)
                            .sum())
                    .isZero();
            assertThat(then.aliveInTrays()
                            + then.lost()
                            + then.balance(Account.POTTED)
                            + then.balance(Account.HANDED_OVER))
                    .isEqualTo(then.opened());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource(SEEDS)
    void noAccountButTheSacIsEverNegative(long seed) {
        List<LedgerEntry> entries = LedgerHistories.entries(seed);
        Ledger ledger = Ledger.of(entries);
        for (LedgerEntry entry : entries) {
            ledger.at(entry.at()).balances().forEach((account, balance) -> {
                if (!account.equals(Account.SAC)) {
                    assertThat(balance).as(account.code()).isNotNegative();
                }
            });
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource(SEEDS)
    void replayingTheEntriesGivesTheState(long seed) {
        List<LedgerEntry> entries = LedgerHistories.entries(seed);
        Ledger grown = Ledger.EMPTY;
        Map<Account, Integer> byHand = new HashMap<>();
        for (LedgerEntry entry : entries) {
            grown = grown.with(List.of(entry));
            byHand.merge(entry.from(), -entry.count(), Integer::sum);
            byHand.merge(entry.to(), entry.count(), Integer::sum);
        }
        assertThat(grown.balances()).isEqualTo(byHand);
        assertThat(Ledger.of(entries)).isEqualTo(grown);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource(SEEDS)
    void aCorrectionReversesExactly(long seed) {
        List<LedgerEntry> entries = LedgerHistories.entries(seed);
        Ledger before = Ledger.of(entries.subList(0, entries.size() - 1));
        LedgerEntry last = entries.get(entries.size() - 1);
        if (last.corrects().isPresent()) {
            return;
        }
        Ledger after = before.with(List.of(last, last.reversal(new UUID(seed, 1))));
        before.balances()
                .forEach(
                        (account, balance) -> assertThat(after.balance(account)).isEqualTo(balance));
        assertThat(after.standing()).isEqualTo(before.standing());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource(SEEDS)
    void whatStandsBalancesLikeTheWhole(long seed) {
        Ledger ledger = Ledger.of(LedgerHistories.entries(seed));
        Ledger standing = Ledger.of(ledger.standing());
        ledger.balances()
                .forEach((account, balance) ->
                        assertThat(standing.balance(account)).isEqualTo(balance));
    }

    @Test
    void refusesToOverdrawATray() {
        Ledger ledger = Ledger.of(List.of(entry(1, EVENING, Account.SAC, A1, 10)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ledger.with(List.of(entry(2, EVENING.plusSeconds(60), A1, Account.DEAD, 11))))
                .withMessageContaining("'A1' would hold -1 animals");
    }

    @Test
    void refusesABackdatedEntryThatOverdrawsOnlyInThePast() {
        Ledger ledger = Ledger.of(List.of(
                entry(1, EVENING, Account.SAC, A1, 10), entry(2, EVENING.plusSeconds(60), Account.SAC, A1, 10)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ledger.with(List.of(entry(3, EVENING.plusSeconds(30), A1, Account.POTTED, 15))));
    }

    @Test
    void entriesOfOneInstantAreOneEvent() {
        Ledger ledger =
                Ledger.of(List.of(entry(1, EVENING, A1, Account.DEAD, 3), entry(2, EVENING, Account.SAC, A1, 10)));
        assertThat(ledger.balance(A1)).isEqualTo(7);
    }

    @Test
    void refusesASecondReversalAndAnInexactOne() {
        LedgerEntry opened = entry(1, EVENING, Account.SAC, A1, 10);
        LedgerEntry reversal = opened.reversal(new UUID(0, 2));
        List<LedgerEntry> twice = new ArrayList<>(List.of(opened, reversal, opened.reversal(new UUID(0, 3))));
        assertThatIllegalArgumentException().isThrownBy(() -> Ledger.of(twice)).withMessageContaining("reversed twice");
        LedgerEntry other = entry(4, EVENING, A1, Account.SAC, 9);
        LedgerEntry inexact = new LedgerEntry(
                other.id(),
                other.at(),
                other.from(),
                other.to(),
                other.stage(),
                other.count(),
                other.cause(),
                "",
                java.util.Optional.of(opened.id()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Ledger.of(List.of(opened, inexact)))
                .withMessageContaining("does not reverse");
    }

    private static LedgerEntry entry(long id, Instant at, Account from, Account to, int count) {
        return LedgerEntry.of(new UUID(0, id), at, from, to, Stage.EGG, count, Cause.UNKNOWN);
    }
}
