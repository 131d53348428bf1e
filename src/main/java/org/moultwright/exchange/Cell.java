package org.moultwright.exchange;

import java.time.Instant;
import java.util.Optional;

/** How values are written into cells. */
final class Cell {
    private Cell() {}

    static String text(String text) {
        return Shield.put(text);
    }

    static String optional(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }

    static String instant(Instant instant) {
        return instant.toString();
    }

    /** A number in its shortest form that reads back as the same; empty for none. */
    static String number(double number) {
        if (Double.isNaN(number)) {
            return "";
        }
        boolean whole = number == Math.rint(number) && Math.abs(number) < 1e15;
        return whole ? Long.toString((long) number) : Double.toString(number);
    }
}
