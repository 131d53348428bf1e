package org.moultwright.exchange;

/**
 * Keeps spreadsheets from taking text for a formula: a text that begins like one gets an apostrophe in front,
 * and so does a text that begins with an apostrophe, so that taking one away gives the text back.
 */
final class Shield {
    private Shield() {}

    static String put(String text) {
        return !text.isEmpty() && "=+-@'".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    static String remove(String text) {
        boolean shielded = text.length() > 1 && text.charAt(0) == '\'' && "=+-@'".indexOf(text.charAt(1)) >= 0;
        return shielded ? text.substring(1) : text;
    }
}
