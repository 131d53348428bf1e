package org.moultwright.ui.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.moultwright.compute.forecast.JointChance;

class AwayLineTest {
    @Test
    void aChanceIsToldWithTheErrorOfItsDraws() {
        assertThat(AwayLine.any(new JointChance(0.6, 0.012)))
                .isEqualTo("Three in five that a tray needs hands while you are away: 60 %, give or take 2.");
    }

    @Test
    void drawsThatAllAgreeAreNoCertainty() {
        assertThat(AwayLine.any(new JointChance(1, 0)))
                .isEqualTo("Almost certain that a tray needs hands while you are away: over 99 %.");
        assertThat(AwayLine.any(new JointChance(0, 0.004)))
                .isEqualTo("Hardly any chance that a tray needs hands while you are away: under 1 %.");
    }
}
