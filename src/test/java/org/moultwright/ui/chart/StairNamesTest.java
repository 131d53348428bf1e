package org.moultwright.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A name one cannot read is no name: it stands clear of every stair and every other name. */
class StairNamesTest {
    private static final double EM = 15;
    private static final double HALF_NAME = 8;

    @Test
    void aNameStandsAboveItsEndWhereNothingElseRuns() {
        StairNames.Place place = names(stair(300, 100)).next(0, 60);
        assertThat(place.right()).isEqualTo(300);
        assertThat(place.middle()).isLessThan(100 - HALF_NAME);
    }

    @Test
    void aNameGoesBeneathWhereAnotherStairRunsAbove() {
        StairNames names = names(stair(150, 100), stair(300, 92));
        assertThat(names.next(0, 60).middle()).isGreaterThan(100 + HALF_NAME);
        assertThat(names.next(1, 60).middle()).isLessThan(92 - HALF_NAME);
    }

    @Test
    void twoStairsThatEndTogetherHaveTwoPlaces() {
        StairNames names = names(stair(300, 100), stair(300, 100));
        double first = names.next(0, 60).middle();
        assertThat(Math.abs(names.next(1, 60).middle() - first)).isGreaterThan(2 * HALF_NAME);
    }

    @Test
    void nothingStandsOverThePlane() {
        assertThat(names(stair(300, 2)).next(0, 60).middle()).isGreaterThan(2 + HALF_NAME);
        assertThat(names(stair(40, 100)).next(0, 60).right()).isEqualTo(80);
    }

    private static StairNames names(StairNames.Stair... stairs) {
        return new StairNames(List.of(stairs), 20, 0, EM);
    }

    /** Level, from the left edge on. */
    private static StairNames.Stair stair(double right, double y) {
        return new StairNames.Stair(new double[] {20, right}, new double[] {y, y});
    }
}
