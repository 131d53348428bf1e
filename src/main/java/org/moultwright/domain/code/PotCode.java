package org.moultwright.domain.code;

import java.util.Locale;
import org.moultwright.domain.Require;

/**
 * The code of one pot: a prefix, a counter of at least three digits and a check character, as in
 * {@code 26A-001-D}.
 *
 * <p>The check character catches every single wrong symbol and all but about one in five hundred swaps of
 * neighbours, so that a misread code is refused and never leads to another animal's pot.
 *
 * @param prefix what all codes of the brood begin with
 * @param counter the pot's number under that prefix, from 1
 */
public record PotCode(PotPrefix prefix, int counter) {
    private static final int HIGHEST_COUNTER = 99_999;

    public PotCode {
        Require.within("counter", counter, 1, HIGHEST_COUNTER);
    }

    /** Reads a code that was scanned or typed, in any case, with or without its hyphens. */
    public static PotCodeReading read(String typed) {
        return PotCodeReader.read(typed);
    }

    /** The code as it stands on the label and in the store. */
    public String text() {
        return stem() + "-" + PotAlphabet.CHECK.checkCharacter(body());
    }

    /** The code without its check character, the part a keeper reads and says. */
    public String stem() {
        return prefix.text() + "-" + number();
    }

    private String body() {
        return prefix.text() + number();
    }

    private String number() {
        return String.format(Locale.ROOT, "%03d", counter);
    }

    @Override
    public String toString() {
        return text();
    }
}
