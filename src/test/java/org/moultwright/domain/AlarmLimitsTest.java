package org.moultwright.domain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class AlarmLimitsTest {
    @Test
    void theyMoveWithTheSetPointButNeverAboveWhatKills() {
        assertThat(AlarmLimits.USUAL.around(Double.NaN)).isEqualTo(AlarmLimits.USUAL);
        assertThat(AlarmLimits.USUAL.around(22)).isEqualTo(new AlarmLimits(15, 18, 24, 26));
        assertThat(AlarmLimits.USUAL.around(30)).isEqualTo(new AlarmLimits(23, 26, 31, 31));
        assertThat(AlarmLimits.USUAL.around(60)).isEqualTo(new AlarmLimits(31, 31, 31, 31));
    }

    @Test
    void theyMustBeInOrder() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AlarmLimits(20, 30, 29, 31))
                .withMessageContaining("highCelsius");
    }
}
