package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.stage.Chance;
import org.moultwright.domain.Stage;

class KindDangerTest {
    private static final int DRAWS = 4000;
    private static final int LATER = LifeTable.part(Stage.INSTAR1, 1);

    /** Mean and variance of a gamma law of shape 4 and mean 1. */
    @Test
    void ofNoBroodTheLevelIsAsBelieved() {
        List<KindDanger.Danger> drawn = draws(List.of());
        double mean = mean(drawn, KindDanger.Danger::level);
        double square = mean(drawn, danger -> danger.level() * danger.level());
        assertThat(mean).isCloseTo(1, within(0.03));
        assertThat(square - mean * mean).isCloseTo(0.25, within(0.03));
        // 0.2 of 2, 0.4 of 4, 0.25 of 8 and 0.15 of 16.
        assertThat(mean(drawn, KindDanger.Danger::frailtyShape)).isCloseTo(6.4, within(0.3));
    }

    @Test
    void broodsThatLoseAlikeAreTakenForAlike() {
        double alike = mean(draws(broods(60, 58, 61, 63, 59)), KindDanger.Danger::frailtyShape);
        double unlike = mean(draws(broods(20, 140, 35, 60, 50)), KindDanger.Danger::frailtyShape);
        assertThat(alike).isGreaterThan(1.5 * unlike);
    }

    @Test
    void deadOfWhomNobodyWasCountedTellNothing() {
        assertThat(draws(List.of(brood(3, 0), LifeTable.empty()))).isEqualTo(draws(List.of()));
    }

    @Test
    void theLevelIsTheirs() {
        // Each would have lost 30 if it were usual.
        assertThat(mean(draws(broods(60, 58, 61, 63, 59)), KindDanger.Danger::level))
                .isCloseTo(2, within(0.2));
    }

    @Test
    void fewOwnDeadSayLessWhereBroodsAreAlike() {
        LifeTable own = brood(1, 3);
        double alike = hazard(broods(60, 58, 61, 63, 59), own);
        double unlike = hazard(broods(20, 140, 35, 60, 50), own);
        double usual = 2 * Mortality.usualHazard(LATER);
        assertThat(alike).isBetween(unlike, usual);
        assertThat(usual - alike).isLessThan(0.8 * (usual - unlike));
    }

    private static double hazard(List<LifeTable> earlier, LifeTable own) {
        Mortality mortality = new Mortality(List.of(Stage.INSTAR1), earlier, own);
        Chance chance = new Chance(5);
        return Stream.generate(() -> mortality.draw(chance)[LATER])
                .limit(DRAWS)
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
    }

    private static List<KindDanger.Danger> draws(List<LifeTable> broods) {
        KindDanger kind = new KindDanger(broods);
        Chance chance = new Chance(4);
        return Stream.generate(() -> kind.draw(chance)).limit(DRAWS).toList();
    }

    private static double mean(List<KindDanger.Danger> draws, ToDoubleFunction<KindDanger.Danger> what) {
        return draws.stream().mapToDouble(what).average().orElseThrow();
    }

    private static List<LifeTable> broods(int... dead) {
        return IntStream.of(dead).mapToObj(each -> brood(each, 30)).toList();
    }

    /** A brood past hatching that would have lost so many if it were usual. */
    private static LifeTable brood(int dead, double usualDead) {
        double[] deaths = new double[LifeTable.PARTS];
        double[] lived = new double[LifeTable.PARTS];
        deaths[LATER] = dead;
        lived[LATER] = usualDead / Mortality.usualHazard(LATER);
        return new LifeTable(deaths, lived, 0, 0);
    }
}
