package org.moultwright.domain.code;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.moultwright.domain.Require;

/**
 * Codes that differ in their number only.
 *
 * @param before what stands before the number
 * @param after what stands after it, the check character aside
 * @param digits how many digits the number has at least
 */
public record CodeRun(String before, String after, int digits) {
    static final int MOST_DIGITS = 5;

    private static final int HIGHEST = 99_999;

    /** The code with this number. */
    public PotCode code(int number) {
        Require.within("number", number, 1, HIGHEST);
        return new PotCode(before + String.format(Locale.ROOT, "%0" + digits + "d", number) + after);
    }

    /**
     * The next codes after the highest of this run. A code that only looks like a free one, as its symbols are those of a
     * code of another pattern, is passed over; those given are taken from then on.
     */
    public List<PotCode> next(int howMany, TakenCodes taken) {
        if (howMany == 0) {
            return List.of();
        }
        List<PotCode> codes = new ArrayList<>(howMany);
        for (int number = taken.highest(this) + 1; codes.size() < howMany; number++) {
            PotCode code = code(number);
            if (taken.take(code.text())) {
                codes.add(code);
            }
        }
        return Collections.unmodifiableList(codes);
    }
}
