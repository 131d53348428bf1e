package org.moultwright.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
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
        assertThat(lane.words(Row.FIRST, FROM)).as("the latest").contains(slings.since());
        assertThat(lane.words(Row.HALF, FROM)).as("a square stands there").isEmpty();
        assertThat(lane.words(Row.MOST, FROM)).as("nothing has been").isEmpty();
    }

    @Test
    void ofStagesEnteredOnOneDayTheLastIsTold() {
        Lane lane = new Lane(List.of(been(Row.HALF, Stage.POSTEMBRYO, 20), been(Row.HALF, Stage.INSTAR1, 20)));

        assertThat(lane.words(Row.HALF, FROM)).contains("instar1 since");
    }

    @Test
    void aRowWithAWindowAheadIsNotEmpty() {
        Instant ahead = FROM.plus(Duration.ofDays(9));
        Lane lane = new Lane(List.of(
                been(Row.FIRST, Stage.DARKENED, 20),
                new Window(Row.FIRST, Stage.INSTAR2, ahead, ahead, ahead, false, "")));
        assertThat(lane.words(Row.FIRST, FROM)).isEmpty();
    }

    @Test
    void whatHasBegunOnADayNobodyWroteDownIsToldWhereItsRowWouldBeEmpty() {
        Optional<Lane.Begun> slings = Optional.of(new Lane.Begun(Stage.INSTAR2, "slings there, day not known"));
        Lane early = new Lane(List.of(been(Row.FIRST, Stage.DARKENED, 20)), slings);
        assertThat(early.words(Row.FIRST, FROM)).as("the later stage").contains("slings there, day not known");
        assertThat(early.words(Row.HALF, FROM)).as("of the first alone").isEmpty();
        assertThat(new Lane(List.of(been(Row.FIRST, Stage.DARKENED, -1)), slings).words(Row.FIRST, FROM))
                .as("a square stands there")
                .isEmpty();
        Optional<Lane.Begun> dark = Optional.of(new Lane.Begun(Stage.DARKENED, "dark nymphs there, day not known"));
        assertThat(new Lane(List.of(been(Row.FIRST, Stage.INSTAR2, 20)), dark).words(Row.FIRST, FROM))
                .as("the later stage")
                .contains("instar2 since");
    }

    private static Window been(Row row, Stage into, int daysBefore) {
        Instant at = FROM.minus(Duration.ofDays(daysBefore));
        return new Window(row, into, at, at, at, true, into.key() + " since");
    }
}
