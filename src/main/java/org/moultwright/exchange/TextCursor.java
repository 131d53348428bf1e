package org.moultwright.exchange;

/**
 * Walks along a cell from its first character on. Each step tells whether what it asks for stands there, and goes past
 * it if so. Files of millions of rows are read by it, which expressions would take three times as long for. Digits and
 * white space are those of ASCII.
 */
final class TextCursor {
    private final String text;
    private int at;
    private int number;
    private int digits;

    TextCursor(String text) {
        this.text = text;
    }

    /** Goes past digits, at most nine, to be asked for by {@link #number()}; there must be from least to most of them. */
    boolean digits(int least, int most) {
        int from = at;
        number = 0;
        while (at < text.length() && at - from < most && isDigit(text.charAt(at))) {
            number = number * 10 + text.charAt(at) - '0';
            at++;
        }
        digits = at - from;
        return digits >= least && !(at < text.length() && isDigit(text.charAt(at)));
    }

    /** The number the last digits made. */
    int number() {
        return number;
    }

    /** How many digits that were. */
    int digits() {
        return digits;
    }

    /** Goes past one of some characters. */
    boolean oneOf(String characters) {
        boolean isThere = at < text.length() && characters.indexOf(text.charAt(at)) >= 0;
        at += isThere ? 1 : 0;
        return isThere;
    }

    /** Goes past white space and tells whether there was any. */
    boolean spaces() {
        int from = at;
        while (at < text.length() && " \t\n\u000B\f\r".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        return at > from;
    }

    /** The character gone past last. */
    char last() {
        return text.charAt(at - 1);
    }

    boolean isAtEnd() {
        return at == text.length();
    }

    private static boolean isDigit(char character) {
        return character >= '0' && character <= '9';
    }
}
