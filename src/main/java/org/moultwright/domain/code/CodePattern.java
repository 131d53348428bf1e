package org.moultwright.domain.code;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.domain.Require;

/**
 * How the codes of pots are made, as the keeper writes it: {@code {yy}{brood}-{nnn}} gives 26A-001 and so on, each with
 * its check character behind. Letters and digits of the keeper's own stand as they are; a field in braces takes what
 * {@link CodeField} says; the number has a digit for each n, and more when they are used up.
 *
 * <p>A pattern always has one number, only symbols that look like no other, and never more than a code may have.
 *
 * @param written as written, the keeper's own letters in capitals
 */
public record CodePattern(String written) {
    /** How the number is written. */
    public static final String NUMBER = "{nnn}";

    private static final Pattern PART = Pattern.compile("\\{([^{}]*)}|[^{}]+|[{}]");
    private static final Pattern NUMBER_DIGITS = Pattern.compile("n{1,5}");

    /** Facts as long as they get: a pattern that holds them holds any. */
    private static final CodeFacts WIDEST = new CodeFacts(2000, "XXX", "XX", "XXXX");

    /** What codes are made by until the keeper says otherwise. */
    public static final CodePattern STANDARD = new CodePattern("{yy}{brood}-{nnn}");

    public CodePattern {
        Optional<String> problem = problemOf(written);
        Require.that(problem.isEmpty(), "written is '" + written + "': " + problem.orElse(""));
    }

    /** Reads a pattern, in any case; where it is none, {@link #problemOf} says why. */
    public static Optional<CodePattern> read(String typed) {
        return problemOf(typed).isEmpty() ? Optional.of(new CodePattern(tidy(typed))) : Optional.empty();
    }

    /** Why no codes can be made by this pattern, in a sentence; empty if they can. */
    public static Optional<String> problemOf(String typed) {
        int numbers = 0;
        for (String part : parts(tidy(typed))) {
            if (digits(part) > 0) {
                numbers++;
            } else {
                Optional<String> problem = CodePatternRules.problemOf(part);
                if (problem.isPresent()) {
                    return problem;
                }
            }
        }
        return CodePatternRules.problemOf(numbers).or(() -> lengthProblemOf(tidy(typed)));
    }

    /** The codes of these animals, one after another. */
    public CodeRun run(CodeFacts facts) {
        return run(written, facts);
    }

    private static CodeRun run(String written, CodeFacts facts) {
        StringBuilder before = new StringBuilder();
        StringBuilder after = new StringBuilder();
        int digits = 0;
        for (String part : parts(written)) {
            int ofNumber = digits(part);
            if (ofNumber > 0) {
                digits = ofNumber;
            } else {
                (digits == 0 ? before : after)
                        .append(CodeField.find(inBraces(part))
                                .map(field -> field.of(facts))
                                .orElse(part));
            }
        }
        return new CodeRun(before.toString(), after.toString(), digits);
    }

    private static Optional<String> lengthProblemOf(String written) {
        CodeRun widest = run(written, WIDEST);
        int fewest = PotAlphabet.normalise(widest.before() + widest.after()).length() + widest.digits();
        int most = fewest + CodeRun.MOST_DIGITS - widest.digits();
        return CodePatternRules.problemOfLength(fewest, most);
    }

    private static String tidy(String typed) {
        StringBuilder tidy = new StringBuilder();
        parts(typed.strip().replaceAll("\\s+", ""))
                .forEach(part -> tidy.append(
                        part.startsWith("{") ? part.toLowerCase(Locale.ROOT) : part.toUpperCase(Locale.ROOT)));
        return tidy.toString();
    }

    private static List<String> parts(String written) {
        List<String> parts = new ArrayList<>();
        Matcher part = PART.matcher(written);
        while (part.find()) {
            parts.add(part.group());
        }
        return parts;
    }

    private static int digits(String part) {
        return NUMBER_DIGITS.matcher(inBraces(part)).matches() ? part.length() - 2 : 0;
    }

    static String inBraces(String part) {
        return part.length() > 1 && part.startsWith("{") ? part.substring(1, part.length() - 1) : "";
    }
}
