package org.moultwright.domain.code;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.moultwright.domain.Brood;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/**
 * What the pot codes of one brood begin with: two digits of a year and one to three letters, as in {@code 26A}.
 *
 * @param text the prefix as written
 */
public record PotPrefix(String text) {
    /** What a prefix must look like, in words for the keeper. */
    public static final String RULE =
            Texts.say("two digits and one to three letters, without I, L, O and U, as in 26A");

    private static final Pattern FORM = Pattern.compile("[0-9]{2}[" + PotAlphabet.LETTERS + "]{1,3}");
    private static final Pattern USABLE_LETTERS =
            Pattern.compile("(?<![A-Z])[" + PotAlphabet.LETTERS + "]{1,3}(?![A-Z])");
    private static final String WITHOUT_LETTERS = "X";

    public PotPrefix {
        Require.that(FORM.matcher(text).matches(), "text is '" + text + "' but must be " + RULE);
    }

    /** The prefix typed by the keeper in any case, or nothing if it breaks {@link #RULE}. */
    public static Optional<PotPrefix> read(String typed) {
        String text = typed.strip().toUpperCase(Locale.ROOT);
        return FORM.matcher(text).matches() ? Optional.of(new PotPrefix(text)) : Optional.empty();
    }

    /**
     * The prefix a brood gets unless the keeper chooses another: the year it was laid, else pulled, else
     * potted, and the last group of letters in its code that a pot code can hold ({@code CC-26-A} gives A,
     * {@code CC-26-L} gives CC).
     */
    public static PotPrefix of(Brood brood, Instant potted) {
        Instant born = brood.laid().map(InstantRange::latest).or(brood::pulled).orElse(potted);
        int year = LocalDate.ofInstant(born, brood.zone()).getYear();
        return new PotPrefix(String.format(Locale.ROOT, "%02d%s", year % 100, lettersOf(brood.code())));
    }

    /** The next {@code howMany} codes after the highest of this prefix among the pots there are. */
    public List<PotCode> next(int howMany, Collection<Pot> existing) {
        int last = existing.stream()
                .flatMap(pot -> PotCode.read(pot.code()).code().stream())
                .filter(code -> code.prefix().equals(this))
                .mapToInt(PotCode::counter)
                .max()
                .orElse(0);
        List<PotCode> codes = new ArrayList<>(howMany);
        for (int i = 1; i <= howMany; i++) {
            codes.add(new PotCode(this, last + i));
        }
        return Collections.unmodifiableList(codes);
    }

    private static String lettersOf(String broodCode) {
        return USABLE_LETTERS
                .matcher(broodCode.toUpperCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .reduce((earlier, later) -> later)
                .orElse(WITHOUT_LETTERS);
    }
}
