package org.moultwright.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class TrayContentsTest {
    private static final Instant EVENING = Instant.parse("2026-04-09T19:00:00Z");
    private static final Instant LATER = EVENING.plusSeconds(3600);
    private static final Account A1 = Account.tray("A1");

    private final Ledger ledger = Ledger.of(List.of(
            entry(1, EVENING.minusSeconds(99999), Account.SAC, A1, Stage.EGG, 60),
            entry(2, EVENING, A1, Account.DEAD, Stage.POSTEMBRYO, 3),
            entry(3, LATER, A1, Account.DEAD, Stage.INSTAR1, 4)));
    private final Check count = new Check(
            new UUID(1, 1),
            "A1",
            EVENING,
            Map.of(
                    Stage.POSTEMBRYO,
                    new Look.Full(54),
                    Stage.INSTAR1,
                    new Look.Full(3),
                    Stage.INSTAR2,
                    new Look.None()));

    @Test
    void beforeAnyCountHoldsWhatWasPutIn() {
        assertThat(TrayContents.at(EVENING.minusSeconds(1), "A1", ledger, List.of(count)))
                .isEqualTo(new TrayContents(Map.of(Stage.EGG, 60)));
    }

    @Test
    void aCountFollowsTheEntriesOfItsInstant() {
        TrayContents contents = TrayContents.at(EVENING, "A1", ledger, List.of(count));
        assertThat(contents).isEqualTo(new TrayContents(Map.of(Stage.POSTEMBRYO, 54, Stage.INSTAR1, 3)));
        assertThat(contents.total()).isEqualTo(ledger.at(EVENING).balance(A1));
    }

    @Test
    void takesFromTheNearestStageWhereOneRunsOut() {
        assertThat(TrayContents.at(LATER, "A1", ledger, List.of(count)))
                .isEqualTo(new TrayContents(Map.of(Stage.POSTEMBRYO, 53)));
    }

    @Test
    void itsCourseHoldsAtEveryInstant() {
        NavigableMap<Instant, TrayContents> course = TrayContents.course("A1", ledger.standing(), List.of(count));
        assertThat(course).hasSize(3);
        assertThat(List.of(Instant.EPOCH, EVENING.minusSeconds(1), EVENING, EVENING.plusSeconds(1), LATER))
                .allSatisfy(instant -> assertThat(TrayContents.at(instant, course))
                        .isEqualTo(TrayContents.at(
                                instant,
                                "A1",
                                ledger.at(instant),
                                List.of(count).stream()
                                        .filter(check -> !check.at().isAfter(instant))
                                        .toList())));
        assertThat(TrayContents.at(Instant.EPOCH, course)).isEqualTo(TrayContents.NONE);
    }

    @Test
    void aPartialLookChangesNothing() {
        Check look = new Check(new UUID(1, 2), "A1", LATER, Map.of(Stage.DARKENED, new Look.Seen()));
        assertThat(TrayContents.at(EVENING, "A1", ledger, List.of(count, look)).total())
                .isEqualTo(57);
    }

    private static LedgerEntry entry(long id, Instant at, Account from, Account to, Stage stage, int count) {
        return LedgerEntry.of(new UUID(0, id), at, from, to, stage, count, Cause.UNKNOWN);
    }
}
