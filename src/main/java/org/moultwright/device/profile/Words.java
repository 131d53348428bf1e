package org.moultwright.device.profile;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/** How the values in a profile's text are written. */
final class Words {
    private static final Pattern ESCAPE = Pattern.compile("\\\\(?:x([0-9A-Fa-f]{2})|([rn\\\\\"]))");

    private Words() {}

    /** The match of a value that must look so. */
    static Matcher matched(Pattern pattern, String value, String example) {
        Matcher matcher = pattern.matcher(value);
        Require.that(matcher.matches(), Texts.say("'{0}' is not understood; write it like: {1}", value, example));
        return matcher;
    }

    static double number(String value) {
        try {
            return Double.parseDouble(value);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(Texts.say("'{0}' must be a number, with a point", value), e);
        }
    }

    /** Text in which {@code \xB0} is a byte and {@code \r}, {@code \n}, {@code \\}, {@code \"} are as usual. */
    static String unescaped(String value) {
        return ESCAPE.matcher(value).replaceAll(found -> Matcher.quoteReplacement(character(found.group())));
    }

    private static String character(String escape) {
        return switch (escape.charAt(1)) {
            case 'x' -> Character.toString(Integer.parseInt(escape.substring(2), 16));
            case 'r' -> "\r";
            case 'n' -> "\n";
            default -> escape.substring(1);
        };
    }
}
