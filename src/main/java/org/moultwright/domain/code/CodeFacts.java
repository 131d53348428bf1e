package org.moultwright.domain.code;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.moultwright.domain.Brood;
import org.moultwright.domain.InstantRange;

/**
 * What codes can say of the animals they are for, in symbols a code can hold.
 *
 * @param year the year their brood was laid, else pulled, else potted
 * @param broodLetters the last group of letters in the brood's code that a pot code can hold: {@code CC-26-A} gives A,
 *     {@code CC-26-L} gives CC
 * @param taxonLetters the first letter of each of the first two words of the species that a code can hold
 * @param tray the tray's code, what looks like a digit written as that digit, at most four symbols
 */
public record CodeFacts(int year, String broodLetters, String taxonLetters, String tray) {
    private static final int MOST_TRAY_SYMBOLS = 4;
    private static final Pattern USABLE_LETTERS =
            Pattern.compile("(?<![A-Z])[" + PotAlphabet.LETTERS + "]{1,3}(?![A-Z])");
    private static final Pattern UNUSABLE = Pattern.compile("[^" + PotAlphabet.DIGITS + PotAlphabet.LETTERS + "]");
    private static final Pattern NO_LETTER = Pattern.compile("[^" + PotAlphabet.LETTERS + "]");
    private static final String NONE_USABLE = "X";

    public static CodeFacts of(Brood brood, String tray, Instant potted) {
        Instant born = brood.laid().map(InstantRange::last).or(brood::pulled).orElse(potted);
        return new CodeFacts(
                LocalDate.ofInstant(born, brood.zone()).getYear(),
                lettersOf(brood.code()),
                initialsOf(brood.taxon()),
                symbolsOf(tray));
    }

    private static String lettersOf(String broodCode) {
        return USABLE_LETTERS
                .matcher(broodCode.toUpperCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .reduce((earlier, later) -> later)
                .orElse(NONE_USABLE);
    }

    private static String initialsOf(String taxon) {
        return Arrays.stream(taxon.toUpperCase(Locale.ROOT).strip().split("\\s+"))
                .limit(2)
                .map(word -> first(NO_LETTER.matcher(word).replaceAll(""), 1).orElse(NONE_USABLE))
                .collect(Collectors.joining());
    }

    private static String symbolsOf(String tray) {
        return first(UNUSABLE.matcher(PotAlphabet.normalise(tray)).replaceAll(""), MOST_TRAY_SYMBOLS)
                .orElse(NONE_USABLE);
    }

    private static Optional<String> first(String text, int most) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text.substring(0, Math.min(most, text.length())));
    }
}
