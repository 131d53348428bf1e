package org.moultwright.exchange;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.regex.Pattern;

/** The one way in which instants and numbers may be written in a folder. */
final class Numerals {
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");
    private static final Pattern WHOLE = Pattern.compile("[0-9]+");
    private static final int SHORTEST_INSTANT = "2026-03-25T18:00:00Z".length();

    private Numerals() {}

    /**
     * An instant by RFC 3339, with seconds and an offset or Z.
     *
     * @throws DateTimeException if it is none, or a day that no calendar has
     */
    static Instant instant(String text) {
        boolean full = text.length() >= SHORTEST_INSTANT && text.charAt(4) == '-' && text.charAt(16) == ':';
        if (!full) {
            throw new DateTimeException("'" + text + "' is not an instant");
        }
        return OffsetDateTime.parse(text).toInstant();
    }

    /**
     * A decimal number: no NaN, no infinity, none beyond the range of a double.
     *
     * @throws NumberFormatException if it is none
     */
    static double number(String text) {
        double number = DECIMAL.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
        if (!Double.isFinite(number)) {
            throw new NumberFormatException(text);
        }
        return number;
    }

    /**
     * A whole number of at least 0, digits only.
     *
     * @throws NumberFormatException if it is none, or one too large for a count
     */
    static int count(String text) {
        if (!WHOLE.matcher(text).matches()) {
            throw new NumberFormatException(text);
        }
        return Integer.parseInt(text);
    }
}
