package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.stage.Chance;

class BurstRiskTest {
    private static final int DRAWS = 40_000;

    @Test
    void oneTrayInElevenHasABurstInFortyFiveWarmDays() {
        // By hand: 1 − 450/(450 + 45).
        assertThat(chance(LifeTable.empty())).isCloseTo(0.0909, within(0.006));
    }

    @Test
    void aKindThatHadManyHasMore() {
        LifeTable many = new LifeTable(new double[LifeTable.PARTS], new double[LifeTable.PARTS], 8, 900);
        // By hand: 1 − (1350/(1350 + 45))⁹.
        assertThat(chance(many)).isCloseTo(0.2555, within(0.01));
    }

    @Test
    void aBurstTakesThoseThatLiveThroughIt() {
        Bursts bursts = new Bursts(new double[] {70, 50}, new double[] {0.5, 0.25});
        assertThat(bursts.survival(1, 40, 50)).isEqualTo(0.75);
        assertThat(bursts.survival(1, 40, 49)).isEqualTo(1);
        assertThat(bursts.survival(1, 50, 60)).isEqualTo(1);
    }

    private static double chance(LifeTable earlier) {
        Bursts next = new BurstRisk(earlier, LifeTable.empty()).next(20, DRAWS, new Chance(5));
        assertThat(Arrays.stream(next.shares()).boxed())
                .allSatisfy(share -> assertThat(share).isBetween(0.0, 1.0));
        return Arrays.stream(next.ages()).filter(age -> age <= 65).count() / (double) DRAWS;
    }
}
