package org.moultwright.domain.code;

import org.moultwright.domain.Require;

/**
 * A check character by the hybrid system of ISO 7064, over any alphabet of M symbols.
 *
 * <p>With the 36 symbols 0-9 A-Z this is MOD 37,36. Starting from P = M, each symbol of value a gives
 * P ← 2·((P + a) mod M, or M where that is 0) mod (M + 1); the check character c makes (P + c) mod M = 1.
 * Because M is even, 2 is invertible mod (M + 1), so that every single wrong symbol is caught; an odd M
 * would not promise that and is refused.
 *
 * @param alphabet the symbols in order of value, each once, an even number of them
 */
record HybridCheck(String alphabet) {
    HybridCheck {
        Require.that(
                alphabet.length() >= 2 && alphabet.length() % 2 == 0,
                "alphabet holds " + alphabet.length() + " symbols but needs an even number");
        Require.that(
                alphabet.chars().distinct().count() == alphabet.length(),
                "alphabet '" + alphabet + "' holds a symbol twice");
    }

    /** The character to write after {@code body}. */
    char checkCharacter(String body) {
        int size = alphabet.length();
        return alphabet.charAt((size + 1 - remainder(body)) % size);
    }

    /** Whether the last character of {@code whole} is the check character of what stands before it. */
    boolean holds(String whole) {
        int last = whole.length() - 1;
        return last >= 0 && whole.charAt(last) == checkCharacter(whole.substring(0, last));
    }

    private int remainder(String body) {
        int size = alphabet.length();
        int product = size;
        for (int i = 0; i < body.length(); i++) {
            int sum = (product + valueOf(body.charAt(i))) % size;
            product = (sum == 0 ? size : sum) * 2 % (size + 1);
        }
        return product;
    }

    private int valueOf(char symbol) {
        int value = alphabet.indexOf(symbol);
        Require.that(value >= 0, "body holds '" + symbol + "' but its symbols are " + alphabet);
        return value;
    }
}
