package org.moultwright.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.workflow.DateOrder;

/**
 * Dates and times as loggers write them: parts of numbers between any of {@code - / .}, a 24-hour or 12-hour clock,
 * seconds and their decimals or none, an offset or none.
 *
 * @param local what the clock showed
 * @param offset the offset written behind it, empty where none is
 */
record WrittenTime(LocalDateTime local, Optional<ZoneOffset> offset) {
    private static final String DATE = "(\\d{1,4})[-/.](\\d{1,2})[-/.](\\d{1,4})\\.?";
    private static final String TIME =
            "(\\d{1,2})[:.h](\\d{2})(?:[:.](\\d{2})(?:[.,](\\d{1,9}))?)?\\s*([AaPp]\\.?[Mm]\\.?)?\\s*(Z|z|[+-]\\d{2}:?\\d{2})?";
    private static final Pattern DAY = Pattern.compile("\\s*" + DATE + "\\s*");
    private static final Pattern CLOCK = Pattern.compile("\\s*" + TIME + "\\s*");
    private static final Pattern BOTH = Pattern.compile("\\s*" + DATE + "(?:[Tt]|,?\\s+)" + TIME + "\\s*");
    private static final int CLOCK_GROUPS_AFTER_DATE = 3;
    private static final int THIS_CENTURY = 2000;

    /** A date and a time in one cell, empty if it holds none. */
    static Optional<WrittenTime> of(String cell, DateOrder order) {
        Matcher found = BOTH.matcher(cell);
        return found.matches() ? joined(date(found, order), found, CLOCK_GROUPS_AFTER_DATE) : Optional.empty();
    }

    /** A date in one cell and a time of day in another. */
    static Optional<WrittenTime> of(String date, String clock, DateOrder order) {
        Matcher found = CLOCK.matcher(clock);
        return found.matches() ? joined(date(date, order), found, 0) : Optional.empty();
    }

    static Optional<LocalDate> date(String cell, DateOrder order) {
        Matcher found = DAY.matcher(cell);
        return found.matches() ? date(found, order) : Optional.empty();
    }

    static boolean isClock(String cell) {
        return CLOCK.matcher(cell).matches();
    }

    private static Optional<WrittenTime> joined(Optional<LocalDate> date, Matcher found, int before) {
        Optional<LocalTime> clock = clock(found, before);
        return date.flatMap(day -> clock.map(time -> new WrittenTime(day.atTime(time), offset(found, before))));
    }

    private static Optional<LocalDate> date(Matcher found, DateOrder order) {
        int first = Integer.parseInt(found.group(1));
        int second = Integer.parseInt(found.group(2));
        int third = Integer.parseInt(found.group(3));
        boolean yearFirst = order == DateOrder.YEAR_FIRST || found.group(1).length() == 4;
        try {
            if (yearFirst) {
                return Optional.of(LocalDate.of(year(first), second, third));
            }
            return Optional.of(
                    order == DateOrder.DAY_FIRST
                            ? LocalDate.of(year(third), second, first)
                            : LocalDate.of(year(third), first, second));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    private static int year(int written) {
        return written < 100 ? THIS_CENTURY + written : written;
    }

    private static Optional<LocalTime> clock(Matcher found, int before) {
        int hour = Integer.parseInt(found.group(before + 1));
        String half = found.group(before + 5);
        if (half != null) {
            if (hour < 1 || hour > 12) {
                return Optional.empty();
            }
            hour = hour % 12 + (Character.toLowerCase(half.charAt(0)) == 'p' ? 12 : 0);
        }
        int second = found.group(before + 3) == null ? 0 : Integer.parseInt(found.group(before + 3));
        String decimals = found.group(before + 4) == null ? "" : found.group(before + 4);
        int nano = Integer.parseInt((decimals + "000000000").substring(0, 9));
        try {
            return Optional.of(LocalTime.of(hour, Integer.parseInt(found.group(before + 2)), second, nano));
        } catch (DateTimeException noSuchTime) {
            return Optional.empty();
        }
    }

    private static Optional<ZoneOffset> offset(Matcher found, int before) {
        return Optional.ofNullable(found.group(before + 6)).flatMap(WrittenTime::offset);
    }

    private static Optional<ZoneOffset> offset(String written) {
        try {
            return Optional.of(ZoneOffset.of(written.equals("z") ? "Z" : written));
        } catch (DateTimeException noSuchOffset) {
            return Optional.empty();
        }
    }
}
