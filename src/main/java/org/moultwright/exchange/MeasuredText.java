package org.moultwright.exchange;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as loggers write them: a decimal point or comma, any of three minus signs, a unit behind. */
final class MeasuredText {
    private static final Pattern NUMBER = Pattern.compile(
            "\\s*([+\\-\u2212\u2013]?)\\s*(\\d{1,15})(?:[.,](\\d{0,15}))?\\s*(?:[°º\u02DA\uFFFD]?\\s*[CFcf]|%(?:\\s*(?:RH|rh|rF))?)?\\s*");

    /** Of each part; two such parts stay below 2⁵³. */
    private static final int PLAIN_DIGITS = 7;

    private static final double[] POWERS_OF_TEN = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7};

    private MeasuredText() {}

    /** The number a cell holds, empty if it holds none. */
    static OptionalDouble number(String cell) {
        OptionalDouble plain = plain(cell);
        return plain.isPresent() ? plain : dressed(cell);
    }

    /**
     * Nearly all cells are digits with a point or comma, told without an expression. Seven digits on either side of it
     * at most make a whole number that a double holds, so that one division rounds as reading the text would.
     */
    private static OptionalDouble plain(String cell) {
        TextCursor cursor = new TextCursor(cell);
        if (!cursor.digits(1, PLAIN_DIGITS)) {
            return OptionalDouble.empty();
        }
        double whole = cursor.number();
        if (cursor.isAtEnd()) {
            return OptionalDouble.of(whole);
        }
        if (!cursor.oneOf(".,") || !cursor.digits(1, PLAIN_DIGITS) || !cursor.isAtEnd()) {
            return OptionalDouble.empty();
        }
        double scale = POWERS_OF_TEN[cursor.digits()];
        return OptionalDouble.of((whole * scale + cursor.number()) / scale);
    }

    private static OptionalDouble dressed(String cell) {
        Matcher found = NUMBER.matcher(cell);
        if (!found.matches()) {
            return OptionalDouble.empty();
        }
        String decimals = found.group(3) == null ? "" : found.group(3);
        double size = Double.parseDouble(found.group(2) + "." + (decimals.isEmpty() ? "0" : decimals));
        boolean isNegative = !found.group(1).isEmpty() && !found.group(1).equals("+");
        return OptionalDouble.of(isNegative ? -size : size);
    }

    /** °F as °C, with no more digits than a thermometer of hundredths has. */
    static double celsiusOf(double fahrenheit) {
        return Math.rint((fahrenheit - 32) / 1.8 * 1e4) / 1e4;
    }
}
