package org.moultwright.exchange;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.workflow.DateOrder;

/**
 * The order of a date's parts: the one in which most of them are days at all, and of such the one in which they
 * lie closest together, as a logger's rows do; where both fit alike, day first.
 */
final class DateOrderGuess {
    private static final Pattern DATE = Pattern.compile("\\s*(\\d{1,4}[-/.]\\d{1,2}[-/.]\\d{1,4})\\b.*");

    private static final Pattern YEAR_IN_FRONT = Pattern.compile("\\d{4}\\D.*");

    private DateOrderGuess() {}

    static DateOrder of(List<String> cells) {
        List<String> dates = cells.stream()
                .map(DATE::matcher)
                .filter(Matcher::matches)
                .map(found -> found.group(1))
                .distinct()
                .toList();
        if (!dates.isEmpty()
                && dates.stream().allMatch(date -> YEAR_IN_FRONT.matcher(date).matches())) {
            return DateOrder.YEAR_FIRST;
        }
        return Arrays.stream(DateOrder.values())
                .min(Comparator.comparingLong((DateOrder order) ->
                                dates.size() - read(dates, order).size())
                        .thenComparingLong(order -> steps(read(dates, order))))
                .orElse(DateOrder.DAY_FIRST);
    }

    private static List<LocalDate> read(List<String> dates, DateOrder order) {
        return dates.stream()
                .map(date -> WrittenTime.date(date, order))
                .flatMap(Optional::stream)
                .toList();
    }

    private static long steps(List<LocalDate> days) {
        long steps = 0;
        for (int i = 1; i < days.size(); i++) {
            steps += Math.abs(ChronoUnit.DAYS.between(days.get(i - 1), days.get(i)));
        }
        return steps;
    }
}
