package org.moultwright.device.profile;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/**
 * What may differ from one installation of a form to the next, such as an address on the wire.
 *
 * @param name by which it is set and used
 * @param options what it may be, the usual one first; of a number only the usual one
 * @param lowest the least it may be, of a number
 * @param highest the most it may be, of a number; of words less than the least
 */
record Setting(String name, List<String> options, int lowest, int highest) {
    private static final Pattern WORDS = Pattern.compile(
            "(?<name>[a-z-]+) = (?:(?<number>\\d{1,5}) in (?<lowest>\\d{1,5})\\.\\.(?<highest>\\d{1,5})|(?<words>[\\w:]+(?: \\| [\\w:]+)+))");
    private static final String EXAMPLE = "address = 1 in 1..247; or: order = ABCD | CDAB";

    static Setting of(String declared) {
        Matcher words = Words.matched(WORDS, declared, EXAMPLE);
        if (words.group("words") != null) {
            return new Setting(words.group("name"), List.of(words.group("words").split(" \\| ", -1)), 1, 0);
        }
        Setting number = new Setting(
                words.group("name"),
                List.of(words.group("number")),
                Integer.parseInt(words.group("lowest")),
                Integer.parseInt(words.group("highest")));
        return new Setting(number.name, List.of(number.allowed(number.usual())), number.lowest, number.highest);
    }

    String usual() {
        return options.get(0);
    }

    /**
     * A value somebody chose.
     *
     * @throws IllegalArgumentException if it may not be this
     */
    String allowed(String value) {
        if (isNumber()) {
            Require.that(
                    value.matches("\\d{1,5}") && allows(Integer.parseInt(value)),
                    Texts.say("{0} is '{1}' but must be a number from {2} to {3}", name, value, lowest, highest));
            return Integer.toString(Integer.parseInt(value));
        }
        Require.that(options.contains(value), Texts.say("{0} is '{1}' but must be one of {2}", name, value, options));
        return value;
    }

    /** Whether it is a number that may be this. */
    boolean allows(int value) {
        return value >= lowest && value <= highest;
    }

    /** All it may be if that is a few values, else only the usual one. */
    List<String> fewValues(int most) {
        return isNumber() && highest - lowest < most
                ? IntStream.rangeClosed(lowest, highest)
                        .mapToObj(String::valueOf)
                        .toList()
                : options;
    }

    private boolean isNumber() {
        return lowest <= highest;
    }
}
