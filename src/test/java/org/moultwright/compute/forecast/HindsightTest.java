package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.stage.Chance;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Stage;
import org.moultwright.exchange.TimingsFile;

class HindsightTest {
    private static final long SEED = 20_261_125;
    private static final int KEEPERS = 8;
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
        assertThat(meanWidthFactor(4)).isGreaterThan(1.05).isGreaterThan(meanWidthFactor(1));
    }

    @Test
    void broodsForecastWithoutSurpriseNarrowThemALittle() {
        assertThat(meanWidthFactor(0.2)).isBetween(0.7, 1.0);
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

    /** Of several keepers: what four broods show of how far broods differ is much a matter of luck. */
    private static double meanWidthFactor(double variation) {
        return LongStream.range(0, KEEPERS)
                .mapToDouble(keeper -> widthFactor(broods(variation, 4, SEED + keeper)))
                .average()
                .orElseThrow();
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
        return broods(variation, count, SEED);
    }

    private static List<BroodRecord> broods(double variation, int count, long seed) {
        Chance chance = new Chance(seed);
        SimulatedHusbandry husbandry = SimulatedHusbandry.of(chance);
        List<BroodRecord> broods = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            broods.add(SimulatedBrood.of("H-" + i, husbandry, variation, chance).record());
        }
        return broods;
    }
}
