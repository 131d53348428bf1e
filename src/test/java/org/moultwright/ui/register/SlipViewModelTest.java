package org.moultwright.ui.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Account;
import org.moultwright.workflow.HandOverSlip;
import org.moultwright.workflow.InventedPots;

class SlipViewModelTest {
    private final RegisterPictures register = new RegisterPictures();
    private final SlipViewModel slip = new SlipViewModel(register.desk, register.model);

    @BeforeEach
    void choosePots() {
        Stream.of(1, 2, 3, 10).forEach(number -> register.model.scan(InventedPots.codeOf("26A", number)));
        register.model.scan(InventedPots.codeOf("26R", 1));
        slip.begin(register.model.concerned());
    }

    @Test
    void itListsWhatIsAliveByBroodAndStageAndNothingNobodyWrote() {
        slip.fromProperty().set(" An invented keeper \n\n Invented Lane 1");
        slip.alsoHandsOverProperty().set(false);
        slip.save();
        HandOverSlip made = register.lastSlip.orElseThrow();
        assertThat(made.from()).containsExactly("An invented keeper", "Invented Lane 1");
        assertThat(made.to()).isEmpty();
        assertThat(made.day()).isEqualTo("5 May 2026");
        assertThat(made.total()).isEqualTo("4 animals in all");
        assertThat(made.lots())
                .extracting(HandOverSlip.Lot::what)
                .containsExactly("1 animal, sling,", "2 animals, instar 3,", "1 animal, sling,");
        assertThat(made.lots().get(0).origin()).isEqualTo("Brood CC-26-A, sac taken from its mother 6 March 2026.");
        assertThat(slip.contentsProperty().get()).endsWith("1 pot left off, the animal dead.");
        assertThat(balance()).isEqualTo(1);
    }

    @Test
    void onceSavedTheHandOverIsWrittenDownWithWhoHasThem() {
        slip.toProperty().set("A club\nits room");
        slip.save();
        assertThat(slip.doneProperty().get()).isEqualTo("Slip saved: hand-over-2026-05-05.pdf.");
        assertThat(balance()).isEqualTo(1 + 4);
        assertThat(register.model
                        .byCode(InventedPots.codeOf("26A", 1))
                        .life()
                        .end()
                        .orElseThrow()
                        .note())
                .isEqualTo("to A club");
        assertThat(register.model.deeds().doneProperty().get()).isEqualTo("4 pots handed over.");
    }

    @Test
    void aDayAheadGetsASlipButNoHandOver() {
        slip.dayProperty().set(LocalDate.of(2026, 5, 9));
        slip.save();
        assertThat(slip.problemProperty().get()).startsWith("That day is yet to come.");
        assertThat(register.lastSlip).isEmpty();
        slip.alsoHandsOverProperty().set(false);
        slip.save();
        assertThat(register.lastSlip.orElseThrow().day()).isEqualTo("9 May 2026");
        assertThat(balance()).isEqualTo(1);
    }

    @Test
    void thereIsNoneForTheDeadAlone() {
        register.model.marks().clear();
        register.model.scan(InventedPots.codeOf("26A", 10));
        slip.begin(register.model.concerned());
        assertThat(slip.problemProperty().get())
                .isEqualTo("No pot with a living animal is chosen, so there is nothing to hand over.");
        slip.save();
        assertThat(register.lastSlip).isEmpty();
    }

    private int balance() {
        return register.book.find("CC-26-A").orElseThrow().ledger().balance(Account.HANDED_OVER)
                + register.book.find("PR-26-R").orElseThrow().ledger().balance(Account.HANDED_OVER);
    }
}
