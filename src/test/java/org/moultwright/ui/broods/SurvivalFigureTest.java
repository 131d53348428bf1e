package org.moultwright.ui.broods;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.history.BroodSurvival;

/** The curve is of animals in trays, and its words claim no more: some may have died in their pots. */
class SurvivalFigureTest {
    private static final BroodSurvival.Point START = new BroodSurvival.Point(0, 1, 1, 1);

    @Test
    void withoutADeathInATrayNoOtherIsDenied() {
        assertThat(SurvivalFigure.words(survival(START)))
                .isEqualTo("None of 335 died in a tray in 60 days, so there are no limits to tell.");
    }

    @Test
    void theShareIsOfThoseInTrays() {
        assertThat(SurvivalFigure.words(survival(START, new BroodSurvival.Point(30, 0.9, 0.83, 0.94))))
                .isEqualTo("In trays 90 % of 335 lived 60 days; 95 % limits 83 to 94 %.");
    }

    private static BroodSurvival survival(BroodSurvival.Point... points) {
        return new BroodSurvival(Instant.EPOCH, 335, 60.1, List.of(points));
    }
}
