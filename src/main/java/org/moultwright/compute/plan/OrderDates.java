package org.moultwright.compute.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.moultwright.domain.Require;

/**
 * The day to order something, so that it is there in time with a chosen safety.
 *
 * <p>It is there in time if it comes on a day before the one on which it is first wanted.
 *
 * @param orderBy the last safe day to order it, today where that has passed
 * @param thereBy the day it comes if ordered then
 * @param isLate whether the last safe day has passed
 * @param inTime how likely it is there in time, within [0, 1], if ordered on that day
 */
public record OrderDates(LocalDate orderBy, LocalDate thereBy, boolean isLate, double inTime) {

    /**
     * The safe days for something wanted so long after the first of the animals is ready.
     *
     * @param firsts when each tray's first animals are ready
     * @param wantedAfter how long after the first one it is wanted
     * @param deliveryDays from the order to the day it comes
     */
    public static OrderDates of(
            Earliest firsts, Duration wantedAfter, double safety, int deliveryDays, ZoneId zone, LocalDate today) {
        Require.within("deliveryDays", deliveryDays, 0, 365);
        LocalDate wanted = day(firsts.noneBefore(safety).plus(wantedAfter), zone);
        LocalDate lastSafe = wanted.minusDays(1).minusDays(deliveryDays);
        boolean isLate = lastSafe.isBefore(today);
        LocalDate orderBy = isLate ? today : lastSafe;
        LocalDate thereBy = orderBy.plusDays(deliveryDays);
        Instant dayAfter = thereBy.plusDays(1).atStartOfDay(zone).toInstant();
        return new OrderDates(orderBy, thereBy, isLate, 1 - firsts.chanceBy(dayAfter.minus(wantedAfter)));
    }

    private static LocalDate day(Instant instant, ZoneId zone) {
        return instant.atZone(zone).toLocalDate();
    }
}
