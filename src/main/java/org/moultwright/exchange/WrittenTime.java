package org.moultwright.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.moultwright.workflow.DateOrder;

/**
 * Dates and times as loggers write them: parts of numbers between any of {@code - / .}, a 24-hour or 12-hour clock,
 * seconds and their decimals or none, an offset or none.
 *
 * @param local what the clock showed
 * @param offset the offset written behind it, empty where none is
 */
record WrittenTime(LocalDateTime local, Optional<ZoneOffset> offset) {
    private static final String DATE_MARKS = "-/.";
    private static final int THIS_CENTURY = 2000;

    /** A date and a time in one cell, empty if it holds none. */
    static Optional<WrittenTime> of(String cell, DateOrder order) {
        TextCursor cursor = new TextCursor(cell);
        cursor.spaces();
        Optional<LocalDate> date = date(cursor, order);
        if (!cursor.oneOf("Tt")) {
            cursor.oneOf(",");
            if (!cursor.spaces()) {
                return Optional.empty();
            }
        }
        return date.flatMap(day -> clock(cursor, day));
    }

    /** A date in one cell and a time of day in another. */
    static Optional<WrittenTime> of(String date, String clock, DateOrder order) {
        return date(date, order).flatMap(day -> clock(ofClock(clock), day));
    }

    static Optional<LocalDate> date(String cell, DateOrder order) {
        TextCursor cursor = new TextCursor(cell);
        cursor.spaces();
        Optional<LocalDate> date = date(cursor, order);
        cursor.spaces();
        return cursor.isAtEnd() ? date : Optional.empty();
    }

    /** Whether a cell is written as a time of day, be it one or not. */
    static boolean isClock(String cell) {
        return ClockFace.read(ofClock(cell)).isPresent();
    }

    private static TextCursor ofClock(String cell) {
        TextCursor cursor = new TextCursor(cell);
        cursor.spaces();
        return cursor;
    }

    private static Optional<LocalDate> date(TextCursor cursor, DateOrder order) {
        if (!cursor.digits(1, 4)) {
            return Optional.empty();
        }
        int first = cursor.number();
        boolean yearFirst = order == DateOrder.YEAR_FIRST || cursor.digits() == 4;
        if (!cursor.oneOf(DATE_MARKS) || !cursor.digits(1, 2)) {
            return Optional.empty();
        }
        int second = cursor.number();
        if (!cursor.oneOf(DATE_MARKS) || !cursor.digits(1, 4)) {
            return Optional.empty();
        }
        int third = cursor.number();
        cursor.oneOf(".");
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

    private static Optional<WrittenTime> clock(TextCursor cursor, LocalDate day) {
        return ClockFace.read(cursor).flatMap(face -> face.on(day));
    }
}
