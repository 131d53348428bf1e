package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.moultwright.workflow.InventedShelf.A;
import static org.moultwright.workflow.InventedShelf.B;
import static org.moultwright.workflow.InventedShelf.NOW;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.Account;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.ShareTrays.Part;

class ShareTraysTest {
    private static final int DEEDS = 60;

    private final MemoryBroodBook book = new MemoryBroodBook();
    private final ShareTrays share = new ShareTrays(book, () -> NOW, UUID::randomUUID);
    private final ArrangeShelf arrange = new ArrangeShelf(book, () -> NOW, UUID::randomUUID);

    @BeforeEach
    void fill() {
        InventedShelf.takeIn(book);
    }

    @Test
    void aPartGoesToANewTrayThatStandsBesideTheOld() {
        share.split(part("A1", "A3", 12, Cause.MOVED, ""));
        assertThat(alive(A, "A1")).isEqualTo(28);
        assertThat(alive(A, "A3")).isEqualTo(12);
        assertThat(shelf().find("A3").orElseThrow().inside()).contains("box 1");
        undo();
        assertThat(alive(A, "A1")).isEqualTo(40);
        assertThat(shelf().find("A3")).isEmpty();
    }

    @Test
    void isolatingNeedsAReasonAndKeepsIt() {
        refused(() -> share.split(part("A1", "A9", 1, Cause.ISOLATED, " ")), "Say why");
        share.split(part("A1", "A9", 1, Cause.ISOLATED, "failed moult"));
        LedgerEntry last = lastEntry();
        assertThat(last.cause()).isEqualTo(Cause.ISOLATED);
        assertThat(last.note()).isEqualTo("failed moult");
    }

    @Test
    void noMoreLeaveThanAreThereAndBroodsStayApart() {
        refused(() -> share.split(part("A1", "A3", 41, Cause.MOVED, "")), "A1 holds 40 animals; 41 cannot leave it.");
        refused(() -> share.split(part("A1", "A3", 0, Cause.MOVED, "")), "Say how many");
        refused(() -> share.split(part("A1", "A1", 1, Cause.MOVED, "")), "already");
        refused(
                () -> share.split(part("A1", "box 2", 1, Cause.MOVED, "")),
                "No animals live in box 2 itself (box). Choose a tray.");
        refused(
                () -> share.split(part("A1", "B1", 1, Cause.MOVED, "")),
                "B1 holds animals of XX-26-B. Broods stay apart");
        refused(() -> share.split(part("A1", "dead", 1, Cause.MOVED, "")), "names something else in the ledger");
        refused(() -> share.merge(A, "A1", "B1", true), "Broods stay apart");
        refused(() -> share.merge(A, "A1", "A7", true), "There is no 'A7'");
        refused(() -> share.merge(B, "A1", "A2", true), "holds animals of XX-26-A");
        assertThat(book.latestDeeds(1)).isEmpty();
    }

    /** What the keeper saw is not what is there: somebody else was faster. */
    @Test
    void aNewTrayIsNoneThatIsThereAndOneThatIsThereIsNotMade() {
        refused(
                () -> share.split(new Part(A, "A1", "A2", true, Map.of(Stage.INSTAR1, 2), Cause.MOVED, "")),
                "A2 was put on the shelf while you wrote.");
        refused(
                () -> share.split(new Part(A, "A1", "A8", false, Map.of(Stage.INSTAR1, 2), Cause.MOVED, "")),
                "A8 was put away while you wrote.");
        assertThat(book.latestDeeds(1)).isEmpty();
    }

    @Test
    void animalsGrowOlderAndNeverYounger() {
        share.split(new Part(A, "A1", "A2", false, Map.of(Stage.INSTAR2, 3), Cause.MOVED, ""));
        refused(
                () -> share.split(part("A2", "A3", 26, Cause.MOVED, "")),
                "When it was last looked at, A2 held 25 of these stages; 26 cannot leave it.");
        share.split(new Part(A, "A2", "A3", isNew("A3"), Map.of(Stage.INSTAR2, 8), Cause.MOVED, ""));
        assertThat(alive(A, "A3")).isEqualTo(8);
    }

    @Test
    void joinedTraysHoldAllAndTheEmptyOneIsPutAway() {
        share.merge(A, "A2", "A1", true);
        assertThat(alive(A, "A1")).isEqualTo(65);
        assertThat(shelf().find("A2")).isEmpty();
        undo();
        assertThat(alive(A, "A2")).isEqualTo(25);
        assertThat(shelf().find("A2").orElseThrow().inside()).contains("box 1");
        share.merge(A, "A2", "A1", false);
        assertThat(shelf().find("A2").orElseThrow().alive()).isZero();
    }

    /** Whatever is done, in whatever order, and taken back: no animal comes or goes, no tray owes one. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void totalsNeverChangeAndNothingFallsBelowZero(long seed) {
        Random random = new Random(seed);
        int refusals = 0;
        for (int deed = 0; deed < DEEDS; deed++) {
            try {
                anything(random);
            } catch (IllegalArgumentException refusal) {
                refusals++;
            }
            requireWhole(A, 65);
            requireWhole(B, 40);
            assertThat(shelf().all())
                    .filteredOn(standing -> standing.kind().holdsBrood())
                    .allSatisfy(tray -> assertThat(tray.contents()).isEmpty());
            assertThat(shelf().all().stream().mapToInt(Standing::alive).sum()).isEqualTo(105);
        }
        assertThat(refusals).isLessThan(DEEDS);
        while (new UndoDeed(book, () -> NOW, UUID::randomUUID).undo().isPresent()) {
            requireWhole(A, 65);
        }
        MemoryBroodBook fresh = new MemoryBroodBook();
        InventedShelf.takeIn(fresh);
        assertThat(shelf()).isEqualTo(ShelfAt.of(fresh, fresh.shelf(), NOW));
    }

    private void anything(Random random) {
        List<String> codes =
                new ArrayList<>(shelf().all().stream().map(Standing::code).toList());
        codes.addAll(List.of("N1", "N2", "nowhere"));
        String one = codes.get(random.nextInt(codes.size()));
        String other = codes.get(random.nextInt(codes.size()));
        String brood = random.nextBoolean() ? A : B;
        switch (random.nextInt(6)) {
            case 0 -> arrange.move(one, Optional.of(other), NOW.minusSeconds(random.nextInt(1_000_000)));
            case 1 ->
                share.split(new Part(
                        brood, one, other, isNew(other), Map.of(Stage.EGG, random.nextInt(50)), Cause.MOVED, ""));
            case 2 ->
                share.split(new Part(
                        brood,
                        one,
                        other,
                        isNew(other),
                        Map.of(Stage.INSTAR2, 1 + random.nextInt(3)),
                        Cause.ISOLATED,
                        "bitten"));
            case 3 -> share.merge(brood, one, other, random.nextBoolean());
            case 4 -> arrange.putAway(one);
            default -> new UndoDeed(book, () -> NOW, UUID::randomUUID).undo();
        }
    }

    private void requireWhole(String brood, int animals) {
        Ledger ledger = book.find(brood).orElseThrow().ledger();
        assertThat(ledger.aliveInTrays()).isEqualTo(animals);
        assertThat(ledger.opened()).isEqualTo(animals);
        assertThat(ledger.balances())
                .allSatisfy((account, balance) ->
                        assertThat(account.equals(Account.SAC) || balance >= 0).isTrue());
        assertThat(ledger.balances().values().stream()
                        .mapToInt(Integer::intValue)
                        .sum())
                .isZero();
    }

    private Part part(String from, String to, int eggs, Cause why, String note) {
        return new Part(A, from, to, isNew(to), Map.of(Stage.EGG, eggs), why, note);
    }

    private boolean isNew(String tray) {
        return shelf().find(tray).isEmpty();
    }

    private LedgerEntry lastEntry() {
        List<LedgerEntry> entries = book.find(A).orElseThrow().ledger().entries();
        return entries.get(entries.size() - 1);
    }

    private int alive(String brood, String tray) {
        return book.find(brood).orElseThrow().ledger().balance(Account.tray(tray));
    }

    private ShelfAt shelf() {
        return ShelfAt.of(book, book.shelf(), NOW);
    }

    private void undo() {
        assertThat(new UndoDeed(book, () -> NOW, UUID::randomUUID).undo()).isPresent();
    }

    private static void refused(ThrowingCallable deed, String why) {
        assertThatThrownBy(deed).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(why);
    }
}
