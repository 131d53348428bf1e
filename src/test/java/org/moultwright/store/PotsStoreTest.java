package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.domain.PotLife;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.InventedPots;
import org.moultwright.workflow.PotLabel;
import org.moultwright.workflow.PotSlings;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.TendPots;
import org.moultwright.workflow.TendPots.Chosen;
import org.moultwright.workflow.TendPots.Tended;
import org.moultwright.workflow.UndoDeed;

/** What happens to pots, kept in a store on disk: across broods in one deed, agreeing with the ledgers, undone whole. */
class PotsStoreTest {
    private static final Instant NOW = InventedPots.NOW;
    private static final String FIRST = "AA-26-A";
    private static final String SECOND = "BB-26-B";

    @TempDir
    private Path folder;

    private H2Store store;

    @BeforeEach
    void potTwoBroods() {
        store = H2Store.open(folder.resolve("room.store"));
        Stream.of(InventedPots.brood(FIRST, "26A", 4), InventedPots.brood(SECOND, "26B", 3))
                .forEach(record -> store.book().takeIn(record, ReadingSource.of(record)));
    }

    @AfterEach
    void closes() {
        store.close();
    }

    @Test
    void oneDeedTellsOfPotsOfSeveralBroodsAndIsTakenBackWhole() {
        Tended died = tend(What.DIED, a(1), a(2), b(3));
        assertThat(died.summary().words()).isEqualTo("3 pots dead");
        assertThat(died.events()).hasSize(3);
        reopen();
        assertThat(alive(FIRST)).isEqualTo(2);
        assertThat(balance(FIRST, Account.POTTED)).isEqualTo(2);
        assertThat(balance(FIRST, Account.DEAD)).isEqualTo(2);
        assertThat(balance(SECOND, Account.POTTED)).isEqualTo(2);
        assertThat(store.check().problems()).isEmpty();

        assertThat(undo().undo()).contains(died.summary());
        reopen();
        assertThat(alive(FIRST)).isEqualTo(4);
        assertThat(record(FIRST).potEvents()).isEmpty();
        assertThat(balance(FIRST, Account.POTTED)).isEqualTo(4);
        assertThat(balance(SECOND, Account.DEAD)).isZero();
        assertThat(record(SECOND).ledger().standing()).hasSize(2);
        assertThat(store.check().problems()).isEmpty();
        assertThat(undo().undo()).isEmpty();
    }

    @Test
    void aHandOverAgreesWithTheLedgerAndWhatIsGoneIsPassedOver() {
        tend(What.HANDED_OVER, a(1));
        assertThat(balance(FIRST, Account.HANDED_OVER)).isEqualTo(1);
        assertThat(balance(FIRST, Account.POTTED)).isEqualTo(3);
        Tended fed = tend(What.FED, a(1), a(2), a(2), b(1));
        assertThat(fed.events()).hasSize(2);
        assertThat(fed.passedOver()).isEqualTo(1);
        assertThat(record(FIRST).ledger().entries()).hasSize(3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tend(What.MOULTED, a(1)))
                .withMessage("Nothing to write down: what you chose is dead or handed over.");
    }

    @Test
    void whatCannotBeIsSaidAndNothingIsWritten() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tend(What.FED, new Chosen(FIRST, "26A-999-X")))
                .withMessage("There is no pot 26A-999-X in the register.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tender().tend(List.of(a(1)), What.FED, NOW.plusSeconds(1), ""))
                .withMessage("That day is yet to come. Choose today or an earlier one.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tender().tend(List.of(a(1)), What.FED, NOW.minus(Duration.ofDays(40)), ""))
                .withMessageStartingWith(a(1).pot() + " was not in its pot yet");
        tend(What.FED, a(1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tender().tend(List.of(b(1), a(1)), What.DIED, NOW.minusSeconds(60), ""))
                .withMessageStartingWith(a(1).pot() + " was still fed");
        assertThat(record(SECOND).potEvents()).isEmpty();
        assertThat(store.check().problems()).isEmpty();
    }

    /** Otherwise another pot given the same code later would have fed before it was filled. */
    @Test
    void aPottingStaysWhileWhatHappenedToItsPotsStands() {
        String code = InventedPots.codeOf("26A", 5);
        Deed.Summary potted = new PotSlings(store.book(), () -> NOW, UUID::randomUUID)
                .save(new PotSlings.Potting(
                        NOW,
                        List.of(new PotSlings.Outcome(
                                FIRST, "A1 26A", "30 ml", List.of(new PotLabel(code, "Invented species", "")), 0))));
        Deed.Summary fed = tend(What.FED, new Chosen(FIRST, code)).summary();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> undo().undo(potted.id()))
                .withMessage("'" + code + " fed' was written later and rests on it. Take that back first.");
        undo().undo(fed.id());
        assertThat(undo().undo(potted.id())).isEqualTo(potted);
        assertThat(record(FIRST).pots()).hasSize(4);
    }

    @Test
    void animalsOfTwoBroodsGoIntoPotsByOneDeedAndComeBackByOne() {
        Deed.Summary potted = new PotSlings(store.book(), () -> NOW, UUID::randomUUID)
                .save(new PotSlings.Potting(
                        NOW,
                        List.of(
                                outcome(FIRST, "30 ml", 5, 0),
                                outcome(FIRST, "60 ml", 6, 0),
                                outcome(SECOND, "30 ml", 4, 1))));
        assertThat(potted.brood()).isEmpty();
        assertThat(potted.words()).isEqualTo("3 potted");
        reopen();
        assertThat(record(FIRST).pots())
                .hasSize(6)
                .last()
                .satisfies(pot -> assertThat(pot.size()).isEqualTo("60 ml"));
        assertThat(balance(FIRST, Account.POTTED)).isEqualTo(6);
        assertThat(balance(SECOND, Account.POTTED)).isEqualTo(4);
        assertThat(balance(SECOND, Account.DEAD)).isEqualTo(1);
        assertThat(store.check().problems()).isEmpty();

        Tended fed = tend(What.FED, new Chosen(SECOND, InventedPots.codeOf("26B", 4)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> undo().undo(potted.id()))
                .withMessageContaining("fed' was written later");
        undo().undo(fed.summary().id());
        undo().undo(potted.id());
        reopen();
        assertThat(record(FIRST).pots()).hasSize(4);
        assertThat(record(SECOND).pots()).hasSize(3);
        assertThat(balance(SECOND, Account.POTTED)).isEqualTo(3);
        assertThat(balance(SECOND, Account.DEAD)).isZero();
        assertThat(store.check().problems()).isEmpty();
    }

    /** A deed that spans two broods leaves each of their folders whole: nothing of it hangs on the other. */
    @Test
    void bothFoldersOfOnePottingAreWhole() {
        new PotSlings(store.book(), () -> NOW, UUID::randomUUID)
                .save(new PotSlings.Potting(
                        NOW, List.of(outcome(FIRST, "60 ml", 5, 0), outcome(SECOND, "30 ml", 4, 1))));
        try (H2Store other = H2Store.open(folder.resolve("other.store"))) {
            for (String brood : List.of(SECOND, FIRST)) {
                Path out = folder.resolve(brood);
                new PlainBroodFolders().write(record(brood), out);
                BroodRecord read = new PlainBroodFolders().read(out).record().orElseThrow();
                assertThat(store.book().takeIn(read, ReadingSource.of(read)).changedNothing())
                        .isTrue();
                other.book().takeIn(read, ReadingSource.of(read));
                BroodRecord taken = other.book().find(brood).orElseThrow();
                assertThat(taken.pots()).isEqualTo(record(brood).pots());
                for (Account account : List.of(Account.POTTED, Account.DEAD, Account.tray("A1 " + prefix(brood)))) {
                    assertThat(taken.ledger().balance(account))
                            .as("%s of %s", account, brood)
                            .isEqualTo(balance(brood, account));
                }
            }
            assertThat(other.check().problems()).isEmpty();
        }
    }

    private static String prefix(String brood) {
        return brood.equals(FIRST) ? "26A" : "26B";
    }

    private static PotSlings.Outcome outcome(String brood, String size, int number, int lost) {
        return new PotSlings.Outcome(
                brood,
                "A1 " + prefix(brood),
                size,
                List.of(new PotLabel(InventedPots.codeOf(prefix(brood), number), "Invented species", "")),
                lost);
    }

    @Test
    void aLedgerThatHoldsFewerInPotsIsSaid() {
        BroodRecord odd = InventedPots.brood("CC-26-C", "26C", 1);
        BroodRecord without =
                odd.with(odd.ledger().at(odd.pots().get(0).potted().minusSeconds(1)));
        store.book().takeIn(without, ReadingSource.of(without));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tend(What.DIED, new Chosen("CC-26-C", InventedPots.codeOf("26C", 1))))
                .withMessage("The ledger of CC-26-C holds 0 in pots then, so 1 cannot leave them."
                        + " See its entries on Broods.");
    }

    @Test
    void aFolderWrittenOutTellsOfPotsAndTakenInAgainAddsNothing() {
        tend(What.FED, a(1), a(2));
        tend(What.DIED, a(2));
        Path out = folder.resolve("out");
        new PlainBroodFolders().write(record(FIRST), out);
        assertThat(out.resolve("potlives.csv")).content().hasLineCount(4).startsWith("time,pot,what,note");
        assertThat(out.resolve("pots.csv")).content().startsWith("pot,tray,potted,label,size");
        BroodRecord read = new PlainBroodFolders().read(out).record().orElseThrow();
        assertThat(read.pots()).isEqualTo(record(FIRST).pots());
        assertThat(read.potEvents())
                .extracting(event -> event.pot() + " " + event.what())
                .containsExactly(a(1).pot() + " FED", a(2).pot() + " DIED", a(2).pot() + " FED");
        assertThat(store.book().takeIn(read, ReadingSource.of(read)).changedNothing())
                .isTrue();
    }

    private Tended tend(What what, Chosen... pots) {
        return tender().tend(List.of(pots), what, NOW, "");
    }

    private TendPots tender() {
        return new TendPots(store.book(), () -> NOW, UUID::randomUUID);
    }

    private UndoDeed undo() {
        return new UndoDeed(store.book(), () -> NOW, UUID::randomUUID);
    }

    private void reopen() {
        store.close();
        store = H2Store.open(folder.resolve("room.store"));
    }

    private static Chosen a(int number) {
        return new Chosen(FIRST, InventedPots.codeOf("26A", number));
    }

    private static Chosen b(int number) {
        return new Chosen(SECOND, InventedPots.codeOf("26B", number));
    }

    private BroodRecord record(String brood) {
        return store.book().find(brood).orElseThrow();
    }

    private long alive(String brood) {
        return PotLife.of(record(brood)).stream().filter(PotLife::isAlive).count();
    }

    private int balance(String brood, Account account) {
        return record(brood).ledger().balance(account);
    }
}
