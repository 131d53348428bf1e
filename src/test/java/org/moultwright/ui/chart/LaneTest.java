package org.moultwright.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Stage;
import org.moultwright.ui.chart.Lane.Row;
import org.moultwright.ui.chart.Lane.Window;

class LaneTest {
    private static final Instant FROM = Instant.parse("2026-04-30T20:00:00Z");

    @Test
    void whatHasBeenBeforeTheCalendarIsToldWhereItsRowWouldBeEmpty() {
        Window dark = been(Row.FIRST, Stage.DARKENED, 20);
        Window slings = been(Row.FIRST, Stage.INSTAR2, 9);
        Lane lane = new Lane(List.of(dark, slings, been(Row.HALF, Stage.INSTAR2, -1)));
        assertThat(lane.before(Row.FIRST, FROM)).as("the latest").contains(slings);
        assertThat(lane.before(Row.HALF, FROM)).as("a square stands there").isEmpty();
        assertThat(lane.before(Row.MOST, FROM)).as("nothing has been").isEmpty();
    }

    @Test
    void ofStagesEnteredOnOneDayTheLastIsTold() {
        Lane lane = new Lane(List.of(been(Row.HALF, Stage.POSTEMBRYO, 20), been(Row.HALF, Stage.INSTAR1, 20)));

        assertThat(lane.before(Row.HALF, FROM)).map(Window::into).contains(Stage.INSTAR1);
    }

    @Test
    void aRowWithAWindowAheadIsNotEmpty() {
        Instant ahead = FROM.plus(Duration.ofDays(9));
        Lane lane = new Lane(List.of(
                been(Row.FIRST, Stage.DARKENED, 20),
                new Window(Row.FIRST, Stage.INSTAR2, ahead, ahead, ahead, false, "")));
        assertThat(lane.before(Row.FIRST, FROM)).isEmpty();
    }

    private static Window been(Row row, Stage into, int daysBefore) {
        Instant at = FROM.minus(Duration.ofDays(daysBefore));
        return new Window(row, into, at, at, at, true, into.key() + " since");
    }
}
