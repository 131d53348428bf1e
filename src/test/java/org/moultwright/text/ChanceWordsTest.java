package org.moultwright.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ChanceWordsTest {
    @Test
    void saysTheNearestOfAFew() {
        assertThat(ChanceWords.of(0.65)).isEqualTo("two in three");
        assertThat(ChanceWords.of(0.5)).isEqualTo("one in two");
        assertThat(ChanceWords.of(0.03)).isEqualTo("one in twenty");
        assertThat(ChanceWords.of(0.99)).isEqualTo("almost certain");
        assertThat(ChanceWords.of(0)).isEqualTo("hardly any chance");
    }

    @Test
    void percentNeverRoundsToImpossibleOrCertain() {
        assertThat(ChanceWords.percent(0.674)).isEqualTo("67 %");
        assertThat(ChanceWords.percent(0.002)).isEqualTo("under 1 %");
        assertThat(ChanceWords.percent(0.998)).isEqualTo("over 99 %");
        assertThat(ChanceWords.percent(0)).isEqualTo("0 %");
        assertThat(ChanceWords.percent(1)).isEqualTo("100 %");
    }

    @Test
    void isAChance() {
        assertThatThrownBy(() -> ChanceWords.of(1.2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("chance");
    }
}
