package org.moultwright.domain.code;

import java.util.Optional;
import org.moultwright.domain.code.PotCodeReading.Reason;
import org.moultwright.domain.code.PotCodeReading.Refused;
import org.moultwright.domain.code.PotCodeReading.Understood;
import org.moultwright.language.Texts;

/** Judges a scanned or typed text; the first thing wrong with it is the reason given. */
final class PotCodeReader {
    /** A code has at least three symbols and its check character. */
    static final int FEWEST_SYMBOLS = 4;

    /** More would not be read off a label, nor typed. */
    static final int MOST_SYMBOLS = 21;

    private static final String EXAMPLE = new PotCode("26A-001").text();

    private PotCodeReader() {}

    static PotCodeReading read(String typed) {
        String text = PotAlphabet.normalise(typed);
        Optional<Character> unknown = firstUnknown(text);
        if (unknown.isPresent()) {
            return new Refused(Reason.UNKNOWN_SYMBOL, Texts.say("'{0}' is never part of a pot code.", unknown.get()));
        }
        if (text.length() < FEWEST_SYMBOLS) {
            return refused(Reason.TOO_SHORT, typed, Texts.say("is too short: a pot code is like {0}.", EXAMPLE));
        }
        if (text.length() > MOST_SYMBOLS || text.chars().noneMatch(symbol -> PotAlphabet.isDigit((char) symbol))) {
            return refused(Reason.OTHER_FORM, typed, Texts.say("is not a pot code: one is like {0}.", EXAMPLE));
        }
        if (!PotAlphabet.CHECK.holds(text)) {
            return refused(
                    Reason.WRONG_CHECK_CHARACTER,
                    typed,
                    Texts.say("is misread: its last character does not fit the rest. Scan or type it again."));
        }
        return new Understood(text);
    }

    private static Refused refused(Reason reason, String typed, String why) {
        return new Refused(reason, "'" + typed.strip() + "' " + why);
    }

    private static Optional<Character> firstUnknown(String text) {
        return text.chars()
                .mapToObj(symbol -> (char) symbol)
                .filter(symbol -> !PotAlphabet.holds(symbol))
                .findFirst();
    }
}
