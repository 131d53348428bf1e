package org.moultwright.ui.chart;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import org.moultwright.language.Dates;

/** The steps a calendar axis may be divided in, finest first. */
enum CalendarStep {
    TEN_SECONDS(Duration.ofSeconds(10)),
    MINUTE(Duration.ofMinutes(1)),
    FIVE_MINUTES(Duration.ofMinutes(5)),
    QUARTER_HOUR(Duration.ofMinutes(15)),
    HOUR(Duration.ofHours(1)),
    THREE_HOURS(Duration.ofHours(3)),
    SIX_HOURS(Duration.ofHours(6)),
    DAY(Duration.ofDays(1)),
    WEEK(Duration.ofDays(7)),
    MONTH(Duration.ofDays(31)),
    QUARTER(Duration.ofDays(92)),
    YEAR(Duration.ofDays(366));

    private final Duration length;

    CalendarStep(Duration length) {
        this.length = length;
    }

    /** The longest such a step can be, whatever the month or the clocks. */
    Duration length() {
        return length;
    }

    /** The start of the step an instant of local time lies in. */
    LocalDateTime floor(LocalDateTime time) {
        LocalDateTime day = time.toLocalDate().atStartOfDay();
        return switch (this) {
            case TEN_SECONDS -> time.withSecond(time.getSecond() / 10 * 10).withNano(0);
            case MINUTE -> time.truncatedTo(ChronoUnit.MINUTES);
            case FIVE_MINUTES -> minutes(time, 5);
            case QUARTER_HOUR -> minutes(time, 15);
            case HOUR -> time.truncatedTo(ChronoUnit.HOURS);
            case THREE_HOURS -> day.plusHours(time.getHour() / 3 * 3L);
            case SIX_HOURS -> day.plusHours(time.getHour() / 6 * 6L);
            case DAY -> day;
            case WEEK -> day.with(TemporalAdjusters.previousOrSame(Dates.firstDayOfWeek()));
            case MONTH -> day.withDayOfMonth(1);
            case QUARTER -> day.withDayOfMonth(1).withMonth((time.getMonthValue() - 1) / 3 * 3 + 1);
            case YEAR -> day.withDayOfYear(1);
        };
    }

    LocalDateTime next(LocalDateTime start) {
        return switch (this) {
            case TEN_SECONDS, MINUTE, FIVE_MINUTES, QUARTER_HOUR, HOUR -> start.plus(length);
            case THREE_HOURS -> start.plusHours(3);
            case SIX_HOURS -> start.plusHours(6);
            case DAY -> start.plusDays(1);
            case WEEK -> start.plusWeeks(1);
            case MONTH -> start.plusMonths(1);
            case QUARTER -> start.plusMonths(3);
            case YEAR -> start.plusYears(1);
        };
    }

    /** How a step is named: what has not changed since the step before is left out. */
    String word(LocalDateTime start, boolean isFirst) {
        return switch (this) {
            case TEN_SECONDS ->
                start.getSecond() == 0
                        ? Dates.clock().format(start)
                        : Dates.form(":ss").format(start);
            case MINUTE, FIVE_MINUTES, QUARTER_HOUR, HOUR, THREE_HOURS, SIX_HOURS ->
                start.toLocalTime().equals(LocalTime.MIDNIGHT)
                        ? Dates.shortDay().format(start)
                        : Dates.clock().format(start);
            case DAY ->
                isFirst || start.getDayOfMonth() == 1
                        ? Dates.shortDay().format(start)
                        : Integer.toString(start.getDayOfMonth());
            case WEEK -> Dates.shortDay().format(start);
            case MONTH, QUARTER ->
                start.getMonthValue() == 1 ? year(start) : Dates.form("LLLL").format(start);
            case YEAR -> year(start);
        };
    }

    private static LocalDateTime minutes(LocalDateTime time, int step) {
        return time.truncatedTo(ChronoUnit.HOURS).plusMinutes(time.getMinute() / step * (long) step);
    }

    private static String year(LocalDateTime start) {
        return Integer.toString(start.getYear());
    }
}
