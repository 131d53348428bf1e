package org.moultwright.domain.code;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.domain.code.PotCodeReading.Reason;
import org.moultwright.domain.code.PotCodeReading.Refused;
import org.moultwright.domain.code.PotCodeReading.Understood;
import org.moultwright.language.Texts;

/** Judges a scanned or typed text; the first thing wrong with it is the reason given. */
final class PotCodeReader {
    private static final int SHORTEST = 7;
    private static final String EXAMPLE = new PotCode(new PotPrefix("26A"), 1).text();

    /** Prefix, counter without needless zeros, check character. */
    private static final Pattern FORM =
            Pattern.compile("([0-9]{2}[A-Z]{1,3})(00[1-9]|0[1-9][0-9]|[1-9][0-9]{2,4})[0-9A-Z]");

    private PotCodeReader() {}

    static PotCodeReading read(String typed) {
        String text = PotAlphabet.normalise(typed);
        Optional<Character> unknown = firstUnknown(text);
        if (unknown.isPresent()) {
            return new Refused(Reason.UNKNOWN_SYMBOL, Texts.say("'{0}' is never part of a pot code.", unknown.get()));
        }
        if (text.length() < SHORTEST) {
            return refused(Reason.TOO_SHORT, typed, Texts.say("is too short: a pot code is like {0}.", EXAMPLE));
        }
        Matcher parts = FORM.matcher(text);
        if (!parts.matches()) {
            return refused(Reason.OTHER_FORM, typed, Texts.say("is not a pot code: one is like {0}.", EXAMPLE));
        }
        if (!PotAlphabet.CHECK.holds(text)) {
            return refused(
                    Reason.WRONG_CHECK_CHARACTER,
                    typed,
                    Texts.say("is misread: its last character does not fit the rest. Scan or type it again."));
        }
        return new Understood(new PotCode(new PotPrefix(parts.group(1)), Integer.parseInt(parts.group(2))));
    }

    private static Refused refused(Reason reason, String typed, String why) {
        return new Refused(reason, "'" + typed.strip() + "' " + why);
    }

    private static Optional<Character> firstUnknown(String text) {
        return text.chars()
                .mapToObj(symbol -> (char) symbol)
                .filter(symbol -> !PotAlphabet.isDigit(symbol) && !PotAlphabet.isLetter(symbol))
                .findFirst();
    }
}
