package org.moultwright.domain.code;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The symbols of a pot code: the ten digits and the letters that look like no digit and no other letter.
 *
 * <p>I, L, O and U are never written. Typed all the same, I and L can only mean 1 and O can only mean 0;
 * U could be a V and is not guessed at.
 */
final class PotAlphabet {
    static final String DIGITS = "0123456789";
    static final String LETTERS = "ABCDEFGHJKMNPQRSTVWXYZ";
    static final HybridCheck CHECK = new HybridCheck(DIGITS + LETTERS);

    /** Thousands of codes are read at once. */
    private static final Pattern UNCOUNTED = Pattern.compile("[\\s\\-\u2010-\u2015]");

    private PotAlphabet() {}

    static boolean isDigit(char symbol) {
        return DIGITS.indexOf(symbol) >= 0;
    }

    static boolean holds(char symbol) {
        return isDigit(symbol) || LETTERS.indexOf(symbol) >= 0;
    }

    /** The typed text in capitals, without spaces and hyphens, look-alikes taken for what they must mean. */
    static String normalise(String typed) {
        return UNCOUNTED
                .matcher(typed.toUpperCase(Locale.ROOT))
                .replaceAll("")
                .replace('O', '0')
                .replace('I', '1')
                .replace('L', '1');
    }
}
