package org.moultwright.ui.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.domain.Account;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.InventedPots;

class RegisterViewModelTest {
    private final RegisterPictures register = new RegisterPictures();
    private final RegisterViewModel model = register.model;

    @ParameterizedTest
    @CsvSource({
        "'', 42",
        "26a-01, 10",
        "26a01, 10",
        "016, 1",
        "cyaneo, 42",
        "cc-26-a dead, 3",
        "DEAD, 4",
        "'handed over pr', 0",
        "60 ml, 14",
        "no such words, 0"
    })
    void wordsFindPotsByCodeBroodSizeAndState(String typed, int shown) {
        model.filterTextProperty().set(typed);
        assertThat(model.shown().size()).isEqualTo(shown);
    }

    @Test
    void whatIsSelectedStaysSelectedWhateverIsShown() {
        model.scan(code(1));
        model.filterTextProperty().set("pr-26-r");
        assertThat(model.shown().size()).isEqualTo(12);
        model.selectShown();
        model.kindProperty().set(RegisterFilter.Kind.SELECTED);
        model.filterTextProperty().set("");
        assertThat(model.shown()).hasSize(13);
        model.tend(What.FED);
        assertThat(model.deeds().doneProperty().get()).isEqualTo("12 pots fed. 1 passed over, dead or handed over.");
        assertThat(model.marks().isEmpty()).isTrue();
        assertThat(model.stepBack()).isTrue();
        assertThat(model.shown()).hasSize(42);
        assertThat(model.stepBack()).isFalse();
    }

    @Test
    void withNoneSelectedItIsTheOneLookedAt() {
        model.look(model.all().get(0));
        model.tend(What.DIED);
        assertThat(model.deeds().doneProperty().get()).isEqualTo(code(1) + " dead.");
        assertThat(register.book.find("CC-26-A").orElseThrow().ledger().balance(Account.DEAD))
                .isEqualTo(4);
        assertThat(model.cursorProperty().get().orElseThrow().state()).isEqualTo(PotState.DEAD);
        assertThat(model.disagreement()).isEmpty();
        model.tend(What.FED);
        assertThat(model.deeds().problemProperty().get())
                .isEqualTo("Nothing to write down: what you chose is dead or handed over.");
    }

    /** A full room takes seconds to be read again. */
    @Test
    void whatWasDoneAndTakenBackIsShownBeforeTheRoomIsReadAgain() {
        List<Runnable> undos = new ArrayList<>();
        RegisterViewModel waiting = register.waiting(undos);
        waiting.scan(code(1));
        waiting.tend(What.DIED);
        assertThat(waiting.byCode(code(1)).state()).isEqualTo(PotState.DEAD);
        assertThat(waiting.disagreement()).as("its ledger is older").isEmpty();
        undos.get(0).run();
        assertThat(waiting.byCode(code(1)).state()).isEqualTo(PotState.ALIVE);
        assertThat(waiting.marks().all()).containsExactly(code(1));
    }

    @Test
    void aDayPastCountsToItsEndAndOneAheadIsRefused() {
        model.scan(code(1));
        model.dayProperty().set(LocalDate.of(2026, 5, 4));
        model.tend(What.FED);
        assertThat(model.byCode(code(1)).last(What.FED)).hasToString("Optional[2026-05-04T23:59:59Z]");
        model.scan(code(1));
        model.dayProperty().set(LocalDate.of(2026, 5, 6));
        model.tend(What.FED);
        assertThat(model.deeds().problemProperty().get())
                .isEqualTo("That day is yet to come. Choose today or an earlier one.");
        assertThat(model.marks().all()).containsExactly(code(1));
    }

    @Test
    void aCodeIsReadInAnyCaseWithoutItsHyphensAndWithLookAlikes() {
        assertThat(model.scan(code(2).toLowerCase(Locale.ROOT).replace("-", "").replace('0', 'o')))
                .isTrue();
        assertThat(model.cursorProperty().get().orElseThrow().code()).isEqualTo(code(2));
        assertThat(model.scan("")).isFalse();
        assertThat(model.scanProblemProperty().get()).isEqualTo("Scan a label, or type its code.");
        assertThat(new ScanBack(Map.of()).find("?")).isEqualTo(new ScanBack.OnNone("'?' is never part of a pot code."));
    }

    @Test
    void aStageIsToldInTheWayTheKeeperCounts() {
        PotRow moulted = model.all().get(1);
        assertThat(List.of(Vocabulary.ENGLISH_HOBBY, Vocabulary.SCIENTIFIC, Vocabulary.N_L_COUNTING))
                .extracting(names -> RegisterWords.stage(moulted, names))
                .containsExactly("instar 3", "instar 3", "L2");
        assertThat(RegisterWords.stage(model.all().get(0), Vocabulary.SCIENTIFIC))
                .isEqualTo("second instar");
    }

    private static String code(int number) {
        return InventedPots.codeOf("26A", number);
    }
}
