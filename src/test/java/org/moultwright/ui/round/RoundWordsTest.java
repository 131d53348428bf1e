package org.moultwright.ui.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.moultwright.workflow.Balance;

class RoundWordsTest {
    @Test
    void whatIsMissingIsAdded() {
        assertThat(RoundWords.balance(new Balance(59, OptionalInt.of(57), 1)))
                .isEqualTo("59 expected = 57 counted + 1 dead + 1 unexplained");
    }

    @Test
    void whatIsTooManyIsTakenOff() {
        assertThat(RoundWords.balance(new Balance(59, OptionalInt.of(115), 0)))
                .isEqualTo("59 expected = 115 counted + 0 dead − 56 unexplained");
    }
}
