package org.moultwright.domain.code;

import java.util.ArrayList;
import java.util.List;

/**
 * Codes that follow one another, each one's number by one above the last one's.
 *
 * @param first the first of them
 * @param last the last of them, the same where there is one
 * @param codes how many
 */
public record CodeSpan(String first, String last, int codes) {

    /** As few spans as there are in these codes, in their order. */
    public static List<CodeSpan> of(List<String> codes) {
        List<CodeSpan> spans = new ArrayList<>();
        for (String code : codes) {
            int at = spans.size() - 1;
            if (at >= 0 && follows(stem(spans.get(at).last), stem(code))) {
                spans.set(at, new CodeSpan(spans.get(at).first, code, spans.get(at).codes + 1));
            } else {
                spans.add(new CodeSpan(code, code, 1));
            }
        }
        return spans;
    }

    public boolean isOne() {
        return codes == 1;
    }

    /** Without its hyphen and check character. */
    private static String stem(String code) {
        return code.substring(0, Math.max(0, code.length() - 2));
    }

    private static boolean follows(String before, String after) {
        int same = 0;
        while (same < Math.min(before.length(), after.length()) && before.charAt(same) == after.charAt(same)) {
            same++;
        }
        while (same > 0 && PotAlphabet.isDigit(before.charAt(same - 1))) {
            same--;
        }
        int end = endOfDigits(before, same);
        int endAfter = endOfDigits(after, same);
        return end > same
                && endAfter > same
                && before.substring(end).equals(after.substring(endAfter))
                && Long.parseLong(after.substring(same, endAfter)) == Long.parseLong(before.substring(same, end)) + 1;
    }

    /** Numbers of more digits than a code has are none. */
    private static int endOfDigits(String text, int from) {
        int end = from;
        while (end < text.length()
                && end - from < PotCodeReader.MOST_SYMBOLS - 3
                && PotAlphabet.isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }
}
