package org.moultwright.ui.control;

import java.text.ParsePosition;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.DecimalStyle;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.language.Dates;
import org.moultwright.language.Texts;

/** A day as it is written on the desk, 3 May 2026, and as keepers type it: 3.5.2026, 3/5/2026, 2026-05-03, 3 May, 3.5. */
public final class WrittenDay {
    private WrittenDay() {}

    /** 3 May 2026. */
    public static String of(LocalDate day) {
        return Dates.shortDayAndYear().format(day);
    }

    /** The day a text with a year means. */
    public static Optional<LocalDate> read(String text) {
        String plain = Typed.plainFigures(text.strip());
        return forms().flatMap(form -> read(plain, form).stream()).findFirst();
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

    /** As the desk writes days, then as the keeper's place orders figures, then what is understood everywhere. */
    private static Stream<DateTimeFormatter> forms() {
        Locale names = Texts.language().locale();
        String figures = Dates.monthStandsFirst() ? "M/d/uuuu" : "d/M/uuuu";
        return Stream.concat(
                Stream.of(Dates.shortDayAndYear(), Dates.dayAndYear())
                        .map(form -> form.withDecimalStyle(DecimalStyle.STANDARD)),
                Stream.of("d MMM uuuu", "d MMMM uuuu", "d.M.uuuu", figures, "uuuu-MM-dd")
                        .flatMap(pattern -> Stream.of(form(pattern, names), form(pattern, Locale.ENGLISH))));
    }

    private static DateTimeFormatter form(String pattern, Locale names) {
        return new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern(pattern)
                .toFormatter(names)
                .withResolverStyle(ResolverStyle.STRICT);
    }

    /** The form of a place would make 28 February of the 31st. */
    private static Optional<LocalDate> read(String text, DateTimeFormatter form) {
        try {
            return Optional.of(LocalDate.parse(text, form))
                    .filter(day -> day.getDayOfMonth()
                            == form.parseUnresolved(text, new ParsePosition(0)).getLong(ChronoField.DAY_OF_MONTH));
        } catch (DateTimeParseException notInThisForm) {
            return Optional.empty();
        }
    }
}
