package org.moultwright.ui.broods;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.moultwright.ui.chart.Calendar;
import org.moultwright.ui.chart.Ribbon;

/** The days a brood's page shows: from its laying to the last of its dates, with a little room around them. */
final class BroodCalendar {
    private static final Duration MARGIN = Duration.ofDays(3);

    private BroodCalendar() {}

    static Calendar of(Ribbon ribbon, ZoneId zone, Instant now) {
        Instant first = ribbon.laid()
                .or(() -> ribbon.past().stream().findFirst().map(Ribbon.Point::at))
                .orElse(now);
        Instant last = ribbon.expected().isEmpty()
                ? ribbon.inside().stream()
                        .map(Ribbon.Inside::from)
                        .max(Instant::compareTo)
                        .orElse(now)
                : ribbon.expected().get(ribbon.expected().size() - 1).at();
        return new Calendar(zone, first.minus(MARGIN), last.isAfter(now) ? last.plus(MARGIN) : now.plus(MARGIN), now);
    }
}
