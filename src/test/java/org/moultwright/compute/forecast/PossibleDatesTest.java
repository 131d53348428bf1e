package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Stage;

class PossibleDatesTest {
    private static final double DAY = Duration.ofDays(1).toMillis();
    private static final double MINUTE = Duration.ofMinutes(1).toMillis();

    @Test
    void aDateIsAfterOneInstantAndByAnother() {
        PossibleDates dates = dates(20_000 * DAY);
        assertThat(isBetween(dates, 19_999 * DAY, 20_000 * DAY)).isTrue();
        assertThat(isBetween(dates, 20_000 * DAY, 20_001 * DAY)).isFalse();
        assertThat(isBetween(dates, 20_000 * DAY - MINUTE, 20_000 * DAY)).isTrue();
    }

    @Test
    void nobodyGetsThereEver() {
        assertThat(isBetween(dates(Double.NaN), -1e300, 1e300)).isFalse();
    }

    @Test
    void aDateTooFarToCountMinutesToIsFarAway() {
        for (double far : new double[] {1e18, 1e300, Double.POSITIVE_INFINITY}) {
            assertThat(isBetween(dates(far), 0, 1_000 * 365 * DAY))
                    .as("%s ms", far)
                    .isFalse();
        }
    }

    private static PossibleDates dates(double firstMillis) {
        double[] far = {1e15};
        return new PossibleDates(List.of(Stage.INSTAR2), new double[][] {{firstMillis}, far, far}, 1);
    }

    private static boolean isBetween(PossibleDates dates, double from, double to) {
        return dates.isBetween(0, Milestone.FIRST, 0, from, to);
    }
}
