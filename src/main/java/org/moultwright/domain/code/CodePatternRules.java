package org.moultwright.domain.code;

import java.util.Optional;
import org.moultwright.language.Texts;

/** What a pattern of codes must keep to, and the sentences that say so. */
final class CodePatternRules {
    private static final String LOOK_ALIKES = "ILOU";

    private CodePatternRules() {}

    /** What is wrong with a part that is no number: words in braces, or the keeper's own symbols. */
    static Optional<String> problemOf(String part) {
        if (part.equals("{") || part.equals("}")) {
            return Optional.of(Texts.say("A brace is not closed: fields are written like {0}.", CodePattern.NUMBER));
        }
        if (part.startsWith("{")) {
            return CodeField.find(CodePattern.inBraces(part)).isPresent()
                    ? Optional.empty()
                    : Optional.of(Texts.say(
                            "There is no {0}. There are {1} and {2}.",
                            part, String.join(", ", CodeField.allWritten()), CodePattern.NUMBER));
        }
        return part.chars()
                .mapToObj(symbol -> (char) symbol)
                .filter(symbol -> symbol != '-' && !PotAlphabet.holds(symbol))
                .findFirst()
                .map(CodePatternRules::problemOf);
    }

    static Optional<String> problemOf(int numbers) {
        if (numbers == 1) {
            return Optional.empty();
        }
        return Optional.of(
                numbers == 0
                        ? Texts.say("Codes need a number: write {0} where it goes, an n a digit.", CodePattern.NUMBER)
                        : Texts.say("One number is enough, and here are {0}.", numbers));
    }

    /**
     * @param fewest symbols a code has at least, its check character aside
     * @param most it may come to have when its number grows
     */
    static Optional<String> problemOfLength(int fewest, int most) {
        if (fewest < PotCodeReader.FEWEST_SYMBOLS - 1) {
            return Optional.of(Texts.say(
                    "Too short: a code has at least {0} symbols before its check character.",
                    PotCodeReader.FEWEST_SYMBOLS - 1));
        }
        if (most > PotCodeReader.MOST_SYMBOLS - 1) {
            return Optional.of(Texts.say(
                    "Too long: such codes may come to have {0} symbols, and {1} are the most.",
                    most, PotCodeReader.MOST_SYMBOLS - 1));
        }
        return Optional.empty();
    }

    private static String problemOf(char symbol) {
        return LOOK_ALIKES.indexOf(symbol) >= 0
                ? Texts.say("Leave out {0}: I, L, O and U look like 1, 0 and V, and are never part of a code.", symbol)
                : Texts.say("'{0}' cannot stand in a code. Letters, digits and hyphens can.", symbol);
    }
}
