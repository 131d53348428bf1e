package org.moultwright.exchange;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as loggers write them: a decimal point or comma, any of three minus signs, a unit behind. */
final class MeasuredText {
    private static final Pattern NUMBER = Pattern.compile(
            "\\s*([+\\-\u2212\u2013]?)\\s*(\\d{1,15})(?:[.,](\\d{0,15}))?\\s*(?:[°º\u02DA\uFFFD]?\\s*[CFcf]|%(?:\\s*(?:RH|rh|rF))?)?\\s*");

    private MeasuredText() {}

    /** The number a cell holds, empty if it holds none. */
    static OptionalDouble number(String cell) {
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
