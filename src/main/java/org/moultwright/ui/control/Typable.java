package org.moultwright.ui.control;

import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;

/**
 * What a field takes, typed or pasted, and what it says of anything else.
 *
 * @param pattern what the text may be at any moment of typing
 * @param tidied what is meant by what was typed or pasted
 * @param refusal what may stand in the field, in a sentence
 */
public record Typable(Pattern pattern, UnaryOperator<String> tidied, String refusal) {
    private static final Pattern BREAKS = Pattern.compile("[\\t\\r\\n]+");

    /** Figures in whatever digits, with nothing around them; a pasted minus may be the printed one. */
    public static Typable figures(Pattern pattern, String refusal) {
        return new Typable(pattern, text -> Typed.plainFigures(text).strip(), refusal);
    }

    /** A number of things. */
    public static Typable wholeNumber(int mostDigits) {
        return figures(
                Pattern.compile("\\d{0," + mostDigits + "}"),
                Texts.say("Only a whole number up to {0}.", "9".repeat(mostDigits)));
    }

    /** A number with a decimal point or comma. */
    public static Typable number(int mostDigits, int mostDecimals) {
        return number("", mostDigits, mostDecimals);
    }

    /** The same, which may be below zero. */
    public static Typable signedNumber(int mostDigits, int mostDecimals) {
        return number("-?", mostDigits, mostDecimals);
    }

    /** Words in one line. */
    public static Typable words(int mostLetters) {
        return new Typable(
                Pattern.compile(".{0," + mostLetters + "}"),
                text -> text.length() < 2
                        ? text
                        : BREAKS.matcher(text).replaceAll(" ").strip(),
                Texts.say("At most {0} letters.", mostLetters));
    }

    private static Typable number(String sign, int mostDigits, int mostDecimals) {
        return figures(
                Pattern.compile(sign + "\\d{0," + mostDigits + "}([.,]\\d{0," + mostDecimals + "})?"),
                Texts.say("Only a number, such as {0}.", Numbers.fixed(1.5, 1)));
    }

    boolean takes(String text) {
        return pattern.matcher(text).matches();
    }
}
