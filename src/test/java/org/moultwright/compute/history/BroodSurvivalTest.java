package org.moultwright.compute.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Stage;

class BroodSurvivalTest {
    private static final Instant OPENED = Instant.parse("2026-03-25T18:00:00Z");
    private static final Account A1 = Account.tray("A1");

    /** 10 watched; 2 die on day 4, 4 are potted on day 6, 1 of the 4 left dies on day 8: 0.8 then 0.8 × 3/4. */
    @Test
    void thePottedAreWatchedUntilTheyAreTakenOut() {
        BroodSurvival survival = survival(
                entry(0, Account.SAC, A1, 10, Cause.OPENED),
                entry(0, Account.SAC, Account.INFERTILE, 5, Cause.INFERTILE),
                entry(4, A1, Account.DEAD, 2, Cause.MOULD),
                entry(6, A1, Account.POTTED, 4, Cause.POTTED),
                entry(8, A1, Account.MISSING, 1, Cause.EATEN_OR_LOST));
        assertThat(survival.animals()).isEqualTo(10);
        assertThat(survival.points()).extracting(BroodSurvival.Point::days).containsExactly(0.0, 4.0, 8.0);
        assertThat(survival.points().get(1).survival()).isCloseTo(0.8, within(1e-12));
        assertThat(survival.last().survival()).isCloseTo(0.6, within(1e-12));
        // Greenwood: 0.36 (2/(10·8) + 1/(4·3)) is the variance.
        double standardError = Math.sqrt(0.36 * (2 / 80.0 + 1 / 12.0));
        double reach = 1.959963984540054 * standardError / (0.6 * Math.abs(Math.log(0.6)));
        assertThat(survival.last().lower()).isCloseTo(Math.pow(0.6, Math.exp(reach)), within(1e-9));
        assertThat(survival.last().upper()).isCloseTo(Math.pow(0.6, Math.exp(-reach)), within(1e-9));
    }

    @Test
    void aMiscountChangesHowManyThereWereAndWhoCameBackNeverDied() {
        BroodSurvival survival = survival(
                entry(0, Account.SAC, A1, 10, Cause.OPENED),
                entry(2, A1, Account.MISSING, 2, Cause.EATEN_OR_LOST),
                entry(3, Account.MISSING, A1, 1, Cause.EARLIER_MISCOUNT),
                entry(5, A1, Account.SAC, 2, Cause.EARLIER_MISCOUNT));
        assertThat(survival.animals()).isEqualTo(8);
        assertThat(survival.last().survival()).isCloseTo(7 / 8.0, within(1e-12));
    }

    @Test
    void aSacNobodyOpenedHasNoSurvival() {
        assertThat(BroodSurvival.of(BroodRecord.of(InventedBrood.brood("IB-1")), OPENED))
                .isEmpty();
    }

    private static BroodSurvival survival(LedgerEntry... entries) {
        BroodRecord record = BroodRecord.of(InventedBrood.brood("IB-1")).with(Ledger.of(List.of(entries)));
        return BroodSurvival.of(record, OPENED.plus(Duration.ofDays(10))).orElseThrow();
    }

    private static LedgerEntry entry(int day, Account from, Account to, int count, Cause cause) {
        return LedgerEntry.of(UUID.randomUUID(), OPENED.plus(Duration.ofDays(day)), from, to, Stage.EGG, count, cause);
    }
}
