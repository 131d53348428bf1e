package org.moultwright.workflow;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Codes in the order people count them: A2 before A10. Codes that differ in writing never compare equal. */
final class CountingOrder implements Comparator<String> {
    private static final Pattern PART = Pattern.compile("\\d+|\\D+");

    @Override
    public int compare(String one, String other) {
        var left = PART.matcher(one).results().map(MatchResult::group).iterator();
        var right = PART.matcher(other).results().map(MatchResult::group).iterator();
        while (left.hasNext() && right.hasNext()) {
            int order = comparePart(left.next(), right.next());
            if (order != 0) {
                return order;
            }
        }
        int order = Boolean.compare(left.hasNext(), right.hasNext());
        return order == 0 ? one.compareTo(other) : order;
    }

    private static int comparePart(String left, String right) {
        boolean areNumbers = Character.isDigit(left.charAt(0)) && Character.isDigit(right.charAt(0));
        return areNumbers ? new BigInteger(left).compareTo(new BigInteger(right)) : left.compareTo(right);
    }
}
