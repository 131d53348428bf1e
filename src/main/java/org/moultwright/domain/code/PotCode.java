package org.moultwright.domain.code;

import org.moultwright.domain.Require;

/**
 * The code of one pot: what its pattern makes of it and a check character, as in {@code 26A-001-D}.
 *
 * <p>The check character catches every single wrong symbol and all but about one in five hundred swaps of
 * neighbours, so that a misread code is refused and never leads to another animal's pot. That holds whatever the
 * pattern: hyphens do not count, and what is checked is all that stands before.
 *
 * @param stem the code without its check character, the part a keeper reads and says
 */
public record PotCode(String stem) {
    public PotCode {
        String symbols = PotAlphabet.normalise(stem);
        Require.that(
                symbols.length() >= PotCodeReader.FEWEST_SYMBOLS - 1
                        && symbols.length() <= PotCodeReader.MOST_SYMBOLS - 1
                        && symbols.chars().allMatch(symbol -> PotAlphabet.holds((char) symbol)),
                "stem is '" + stem + "', which is no part of a pot code");
    }

    /** Reads a code that was scanned or typed, in any case, with or without its hyphens, whatever its pattern. */
    public static PotCodeReading read(String typed) {
        return PotCodeReader.read(typed);
    }

    /** What counts of a code, or of any text on a pot: the same for all ways to write it. */
    public static String symbols(String written) {
        return PotAlphabet.normalise(written);
    }

    /** The code as it stands on the label and in the store. */
    public String text() {
        return stem + "-" + PotAlphabet.CHECK.checkCharacter(symbols(stem));
    }

    /** What counts of it. */
    public String symbols() {
        return symbols(text());
    }

    @Override
    public String toString() {
        return text();
    }
}
