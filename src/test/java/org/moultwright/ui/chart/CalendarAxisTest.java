package org.moultwright.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CalendarAxisTest {
    private static final ZoneId LISBON = ZoneId.of("Europe/Lisbon");

    @Test
    void longStretchesAreDividedIntoMonths() {
        assertThat(axis("2026-02-22T00:00:00Z", "2026-06-10T00:00:00Z", 800).ticks(90))
                .extracting(CalendarAxis.Tick::word)
                .containsExactly("March", "April", "May", "June");
    }

    @Test
    void aTurnOfTheYearIsNamed() {
        assertThat(axis("2025-11-20T00:00:00Z", "2026-02-10T00:00:00Z", 600).ticks(90))
                .extracting(CalendarAxis.Tick::word)
                .containsExactly("December", "2026", "February");
    }

    @Test
    void weeksBeginOnMondays() {
        assertThat(axis("2026-05-01T00:00:00Z", "2026-05-27T00:00:00Z", 500).ticks(90))
                .extracting(CalendarAxis.Tick::word)
                .containsExactly("4 May", "11 May", "18 May", "25 May");
    }

    @Test
    void daysNameTheMonthOnlyWhereItChanges() {
        assertThat(axis("2026-04-28T12:00:00Z", "2026-05-02T12:00:00Z", 400).ticks(63))
                .extracting(CalendarAxis.Tick::word)
                .containsExactly("29 Apr", "30", "1 May", "2");
    }

    @Test
    void daysBeginAtLocalMidnightAcrossTheChangeOfClocks() {
        assertThat(axis("2026-03-28T12:00:00Z", "2026-03-31T12:00:00Z", 400).ticks(63))
                .extracting(CalendarAxis.Tick::at)
                .containsExactly(
                        Instant.parse("2026-03-29T00:00:00Z"),
                        Instant.parse("2026-03-29T23:00:00Z"),
                        Instant.parse("2026-03-30T23:00:00Z"));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
    void wordsHaveTheirRoomAndPixelsLeadBack(long seed) {
        Random random = new Random(seed);
        Instant from = Instant.parse("2024-01-01T00:00:00Z").plusSeconds(random.nextInt(70_000_000));
        Instant to = from.plusSeconds(7200 + random.nextInt(60_000_000));
        CalendarAxis axis = new CalendarAxis(LISBON, from, to, 40, 340 + random.nextInt(900));
        double room = 40 + random.nextInt(60);
        double previous = Double.NEGATIVE_INFINITY;
        for (CalendarAxis.Tick tick : axis.ticks(room)) {
            double x = axis.x(tick.at());
            // A step may be shorter than its longest: February, or the night the clocks go forward.
            assertThat(x - previous).as("seed %d", seed).isGreaterThan(room * 0.66);
            assertThat(axis.at(x)).isCloseTo(tick.at(), within(Duration.ofMillis(1)));
            previous = x;
        }
    }

    private static CalendarAxis axis(String from, String to, double width) {
        return new CalendarAxis(LISBON, Instant.parse(from), Instant.parse(to), 0, width);
    }
}
