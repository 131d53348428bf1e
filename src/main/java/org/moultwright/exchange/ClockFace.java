package org.moultwright.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * A time of day as it is written, which may be none that any clock shows.
 *
 * @param half {@code a} or {@code p} of a 12-hour clock, a space for a 24-hour one
 * @param offset the offset written behind it, empty where none is, or none that exists
 */
record ClockFace(int hour, int minute, int second, int nano, char half, Optional<ZoneOffset> offset) {
    private static final char WHOLE_DAY = ' ';
    private static final int HALF_DAY_HOURS = 12;
    private static final int NANO_DIGITS = 9;

    /** What is written from the cursor to the end of its cell, empty if that is no time of day. */
    static Optional<ClockFace> read(TextCursor cursor) {
        if (!cursor.digits(1, 2)) {
            return Optional.empty();
        }
        int hour = cursor.number();
        if (!cursor.oneOf(":.h") || !cursor.digits(2, 2)) {
            return Optional.empty();
        }
        int minute = cursor.number();
        int second = 0;
        int nano = 0;
        if (cursor.oneOf(":.")) {
            if (!cursor.digits(2, 2)) {
                return Optional.empty();
            }
            second = cursor.number();
            if (cursor.oneOf(".,")) {
                if (!cursor.digits(1, NANO_DIGITS)) {
                    return Optional.empty();
                }
                nano = nanos(cursor);
            }
        }
        cursor.spaces();
        char half = WHOLE_DAY;
        if (cursor.oneOf("AaPp")) {
            half = Character.toLowerCase(cursor.last());
            cursor.oneOf(".");
            if (!cursor.oneOf("Mm")) {
                return Optional.empty();
            }
            cursor.oneOf(".");
            cursor.spaces();
        }
        Optional<ZoneOffset> offset = Optional.empty();
        if (cursor.oneOf("Zz")) {
            offset = Optional.of(ZoneOffset.UTC);
        } else if (cursor.oneOf("+-")) {
            int sign = cursor.last() == '-' ? -1 : 1;
            if (!cursor.digits(2, 4) || cursor.digits() == 3) {
                return Optional.empty();
            }
            int hours = cursor.digits() == 2 ? cursor.number() : cursor.number() / 100;
            if (cursor.digits() == 2 && !(cursor.oneOf(":") && cursor.digits(2, 2))) {
                return Optional.empty();
            }
            offset = offset(sign * hours, sign * (cursor.number() % 100));
        }
        cursor.spaces();
        return cursor.isAtEnd()
                ? Optional.of(new ClockFace(hour, minute, second, nano, half, offset))
                : Optional.empty();
    }

    /** This time of that day, empty if no clock shows it. */
    Optional<WrittenTime> on(LocalDate day) {
        boolean isHalved = half != WHOLE_DAY;
        if (isHalved && (hour < 1 || hour > HALF_DAY_HOURS)) {
            return Optional.empty();
        }
        int ofDay = isHalved ? hour % HALF_DAY_HOURS + (half == 'p' ? HALF_DAY_HOURS : 0) : hour;
        try {
            return Optional.of(new WrittenTime(day.atTime(LocalTime.of(ofDay, minute, second, nano)), offset));
        } catch (DateTimeException noSuchTime) {
            return Optional.empty();
        }
    }

    private static int nanos(TextCursor cursor) {
        int nanos = cursor.number();
        for (int digit = cursor.digits(); digit < NANO_DIGITS; digit++) {
            nanos *= 10;
        }
        return nanos;
    }

    private static Optional<ZoneOffset> offset(int hours, int minutes) {
        try {
            return Optional.of(ZoneOffset.ofHoursMinutes(hours, minutes));
        } catch (DateTimeException noSuchOffset) {
            return Optional.empty();
        }
    }
}
