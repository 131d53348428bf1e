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
    void aBurstIsSetAsideWithTheDaysAboutIt() {
        List<TrayHistory.Loss> losses = new ArrayList<>(List.of(loss(27, 1), loss(36, 1), loss(57, 1)));
        LifeTable everyday = counted(losses);
        losses.addAll(List.of(loss(42, 9), loss(45, 6)));
        LifeTable burst = counted(losses);
        assertThat(everyday.bursts()).isZero();
        assertThat(burst.bursts()).isOne();
        assertThat(deaths(burst)).isEqualTo(2);
        // Of looks every three days, those from 33 to 51 touch the five days before 39 and after 45.
        assertThat(lived(burst)).isCloseTo(lived(everyday) - 50 * 18, within(1e-9));
        assertThat(burst.trayWarmDays()).isEqualTo(everyday.trayWarmDays()).isEqualTo(36);
    }

    @Test
    void aFrailBroodHasNoBursts() {
        List<TrayHistory.Loss> losses = new ArrayList<>();
        for (double age = 27; age <= 60; age += 3) {
            losses.add(loss(age, 4));
        }
        assertThat(counted(losses).bursts()).isZero();
        assertThat(deaths(counted(losses))).isEqualTo(48);
    }

    @Test
    void deadThatNoCountPrecedesTellNothing() {
        assertThat(deaths(counted(List.of(loss(23, 3), loss(30, 1))))).isEqualTo(1);
    }

    /** Fifty animals counted every three warm-days from 24 to 60. */
    private static LifeTable counted(List<TrayHistory.Loss> losses) {
        List<TrayHistory.Exposure> exposures = new ArrayList<>();
        for (double age = 24; age < 60; age += 3) {
            exposures.add(new TrayHistory.Exposure(Stage.POSTEMBRYO, age, age + 3, 50));
        }
        return table(exposures, losses);
    }

    private static double lived(LifeTable table) {
        return Arrays.stream(table.animalWarmDays()).sum();
    }

    @Test
    void broodsThatLoseFewTeachThatFewAreLostInAllPartsOfLife() {
        List<Stage> boundaries = List.of(Stage.POSTEMBRYO, Stage.INSTAR1, Stage.INSTAR2);
        LifeTable none = table(List.of());
        int last = LifeTable.part(Stage.INSTAR2, 1);
        double before = mean(new Mortality(boundaries, List.of(), LifeTable.empty()), last);
        double after = mean(new Mortality(boundaries, List.of(none, none, none, none), LifeTable.empty()), last);
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
        return table(exposures, losses);
    }

    private static LifeTable table(List<TrayHistory.Exposure> exposures, List<TrayHistory.Loss> losses) {
        TrayHistory tray = new TrayHistory("T", 50, 50, 50, List.of(), List.of(), List.of(), exposures, losses);
        return LifeTable.of(List.of(tray), EGG_WARM_DAYS);
    }
}
