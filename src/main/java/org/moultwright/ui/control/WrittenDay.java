package org.moultwright.ui.control;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A day as it is written on the desk, 3 May 2026, and as keepers type it: 3.5.2026, 3/5/2026, 2026-05-03, 3 May, 3.5. */
public final class WrittenDay {
    private static final DateTimeFormatter WRITTEN = form("d MMM uuuu");
    private static final List<DateTimeFormatter> READ =
            List.of(WRITTEN, form("d MMMM uuuu"), form("d.M.uuuu"), form("d/M/uuuu"), form("uuuu-MM-dd"));

    private WrittenDay() {}

    /** 3 May 2026. */
    public static String of(LocalDate day) {
        return WRITTEN.format(day);
    }

    /** The day a text with a year means. */
    public static Optional<LocalDate> read(String text) {
        return READ.stream().flatMap(form -> read(text.strip(), form).stream()).findFirst();
    }

    /** The day a text means; without a year, the latest such day that is not ahead of today. */
    public static Optional<LocalDate> read(String text, LocalDate today) {
        return read(text)
                .or(() -> withYear(text.strip(), today.getYear(), today)
                        .or(() -> withYear(text.strip(), today.getYear() - 1, today)));
    }

    private static Optional<LocalDate> withYear(String text, int year, LocalDate today) {
        String day = text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
        return List.of(" ", ".", "/").stream()
                .flatMap(between -> read(day + between + year).stream())
                .filter(read -> !read.isAfter(today))
                .findFirst();
    }

    private static DateTimeFormatter form(String pattern) {
        return new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern(pattern)
                .toFormatter(Locale.ENGLISH)
                .withResolverStyle(ResolverStyle.STRICT);
    }

    private static Optional<LocalDate> read(String text, DateTimeFormatter form) {
        try {
            return Optional.of(LocalDate.parse(text, form));
        } catch (DateTimeParseException notInThisForm) {
            return Optional.empty();
        }
    }
}
