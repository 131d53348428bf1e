package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Stage;

class LifeTableTest {
    private static final double EGG_WARM_DAYS = 24;

    @Test
    void manyDeadAtOnceCountAsAFewDaysWorthOfThem() {
        LifeTable singly = table(List.of(loss(30, 2), loss(32, 2)));
        LifeTable burst = table(List.of(loss(30, 20), loss(32, 2)));
        assertThat(deaths(singly)).isEqualTo(4);
        assertThat(deaths(burst)).isCloseTo(6, within(1e-9));
    }

    @Test
    void broodsThatLoseFewTeachThatFewAreLostInAllPartsOfLife() {
        List<Stage> boundaries = List.of(Stage.POSTEMBRYO, Stage.INSTAR1, Stage.INSTAR2);
        LifeTable none = table(List.of());
        LifeTable four = none.plus(none).plus(none).plus(none);
        int last = LifeTable.part(Stage.INSTAR2, 1);
        double before = mean(new Mortality(boundaries, LifeTable.empty(), 0, LifeTable.empty()), last);
        double after = mean(new Mortality(boundaries, four, 4, LifeTable.empty()), last);
        assertThat(none.animalWarmDays()[last]).isZero();
        assertThat(after).isLessThan(0.75 * before);
    }

    private static double mean(Mortality mortality, int part) {
        Chance chance = new Chance(3);
        double sum = 0;
        for (int draw = 0; draw < 2000; draw++) {
            sum += mortality.draw(chance)[part];
        }
        return sum / 2000;
    }

    private static double deaths(LifeTable table) {
        return Arrays.stream(table.deaths()).sum();
    }

    private static TrayHistory.Loss loss(double age, int animals) {
        return new TrayHistory.Loss(Stage.POSTEMBRYO, age, animals);
    }

    private static LifeTable table(List<TrayHistory.Loss> losses) {
        List<TrayHistory.Exposure> exposures = new ArrayList<>();
        exposures.add(new TrayHistory.Exposure(Stage.EGG, 10, 24, 50));
        exposures.add(new TrayHistory.Exposure(Stage.POSTEMBRYO, 24, 41, 50));
        TrayHistory tray = new TrayHistory("T", 50, 50, 50, List.of(), List.of(), exposures, losses);
        return LifeTable.of(List.of(tray), EGG_WARM_DAYS);
    }
}
