package org.moultwright.store.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A raw line less the numbers of its reading: in their place stands which it was and with how many decimals. A line
 * that would not come back to the last sign stays as it is.
 *
 * @param text the form; begins with {@link #WHOLE} where it is the line itself
 */
record LineForm(String text) {
    private static final char WHOLE = '\u0003';
    private static final char TEMPERATURE = '\u0001';
    private static final char HUMIDITY = '\u0002';
    private static final int MOST_DECIMALS = 9;
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.(\\d+))?");
    private static final Pattern PLACE = Pattern.compile("([" + TEMPERATURE + HUMIDITY + "])(\\d)");

    static LineForm of(String line, double temperature, double humidity) {
        StringBuilder text = new StringBuilder();
        Matcher number = NUMBER.matcher(line);
        while (number.find()) {
            int decimals = number.group(1) == null ? 0 : number.group(1).length();
            String said = number.group();
            String place = said;
            if (decimals <= MOST_DECIMALS && said.equals(digits(temperature, decimals))) {
                place = "" + TEMPERATURE + decimals;
            } else if (decimals <= MOST_DECIMALS && said.equals(digits(humidity, decimals))) {
                place = "" + HUMIDITY + decimals;
            }
            number.appendReplacement(text, Matcher.quoteReplacement(place));
        }
        number.appendTail(text);
        LineForm form = new LineForm(text.toString());
        return !line.isEmpty()
                        && !form.isWhole()
                        && form.line(temperature, humidity).equals(line)
                ? form
                : new LineForm(WHOLE + line);
    }

    /** The line of a reading. */
    String line(double temperature, double humidity) {
        if (isWhole()) {
            return text.substring(1);
        }
        return PLACE.matcher(text)
                .replaceAll(place -> digits(
                        place.group(1).charAt(0) == TEMPERATURE ? temperature : humidity,
                        Integer.parseInt(place.group(2))));
    }

    private boolean isWhole() {
        return !text.isEmpty() && text.charAt(0) == WHOLE;
    }

    /** The size of a number as an instrument prints it; its sign stands before it. */
    private static String digits(double value, int decimals) {
        return Double.isFinite(value)
                ? BigDecimal.valueOf(Math.abs(value))
                        .setScale(decimals, RoundingMode.HALF_EVEN)
                        .toPlainString()
                : "";
    }
}
