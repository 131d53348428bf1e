package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.stage.Chance;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Stage;
import org.moultwright.exchange.TimingsFile;

class HindsightTest {
    private static final List<Stage> BOUNDARIES = List.of(Stage.POSTEMBRYO, Stage.INSTAR1, Stage.INSTAR2);

    @Test
    void withoutBroodsTheModelIsTakenAtItsWord() {
        assertThat(PastBroods.NONE
                        .lessons(belief(broods(1, 1).get(0)), BOUNDARIES, 27)
                        .widthFactor())
                .isEqualTo(1);
    }

    @Test
    void broodsThatVaryMoreThanBelievedWidenIntervals() {
        assertThat(widthFactor(4)).isGreaterThan(1.05).isGreaterThan(widthFactor(1));
    }

    @Test
    void broodsForecastWithoutSurpriseNarrowThemALittle() {
        assertThat(widthFactor(0.2)).isBetween(0.7, 1.0);
    }

    @Test
    void aBroodForecastWithNothingLearnedDoesNotCount() {
        assertThat(widthFactor(broods(4, 1))).isEqualTo(1);
    }

    @Test
    void orderInWhichTheyAreGivenDoesNotMatter() {
        List<BroodRecord> broods = broods(1, 3);
        List<BroodRecord> turned = new ArrayList<>(broods);
        Collections.reverse(turned);
        assertThat(widthFactor(turned)).isEqualTo(widthFactor(broods));
    }

    @Test
    void aBeliefLessSureOfTheSameAgesIsJudgedByItself() {
        List<BroodRecord> broods = broods(4, 3);
        PastBroods asked = PastBroods.of(broods);
        Belief sure = belief(broods.get(0));
        Belief unsure =
                new Belief(sure.source(), sure.medianWarmDays(), 0.4, sure.stageSd(), sure.rate(), sure.generalRate());
        double bySure = asked.lessons(sure, BOUNDARIES, 27).widthFactor();
        assertThat(asked.lessons(unsure, BOUNDARIES, 27).widthFactor())
                .isEqualTo(PastBroods.of(broods).lessons(unsure, BOUNDARIES, 27).widthFactor())
                .isNotEqualTo(bySure);
    }

    private static double widthFactor(double variation) {
        return widthFactor(broods(variation, 4));
    }

    private static double widthFactor(List<BroodRecord> broods) {
        return PastBroods.of(broods)
                .lessons(belief(broods.get(0)), BOUNDARIES, 27)
                .widthFactor();
    }

    private static Belief belief(BroodRecord brood) {
        return Belief.of(brood.brood(), BOUNDARIES, TimingsFile.shipped());
    }

    private static List<BroodRecord> broods(double variation, int count) {
        Chance chance = new Chance(20_261_125);
        SimulatedHusbandry husbandry = SimulatedHusbandry.of(chance);
        List<BroodRecord> broods = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            broods.add(SimulatedBrood.of("H-" + i, husbandry, variation, chance).record());
        }
        return broods;
    }
}
