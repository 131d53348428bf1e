package org.moultwright.ui.forecast;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.ui.chart.Calendar;
import org.moultwright.ui.chart.Lane;

/** The calendar all lanes share. */
final class SharedCalendar {
    private static final Duration MARGIN = Duration.ofDays(3);
    private static final Duration LEAST_AHEAD = Duration.ofDays(14);

    private SharedCalendar() {}

    /** As long as all that is told and all there would be as things are: trying a warmer place never moves it. */
    static Calendar of(List<LaneLine> lanes, Optional<Lane.Absence> away, ZoneId zone, Instant now) {
        Stream<Instant> windows = lanes.stream()
                .flatMap(line -> Stream.concat(Stream.of(line.lane()), line.asItIs().stream()))
                .flatMap(lane -> lane.windows().stream())
                .map(Lane.Window::to);
        Stream<Instant> others =
                Stream.concat(Stream.of(now.plus(LEAST_AHEAD)), away.stream().map(Lane.Absence::to));
        Instant end = Stream.concat(windows, others).max(Instant::compareTo).orElse(now);
        return new Calendar(zone, now.minus(MARGIN), end.plus(MARGIN), now);
    }
}
