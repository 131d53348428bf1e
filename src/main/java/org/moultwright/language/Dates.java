package org.moultwright.language;

import java.time.DayOfWeek;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DecimalStyle;
import java.time.format.FormatStyle;
import java.time.temporal.WeekFields;
import java.util.Locale;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Days and times as the keeper writes them: their order, their signs, the clock of 24 or 12 hours, the first day of the
 * week. Names of days and months are in the language of the desk. For screens and paper only.
 */
public final class Dates {
    private static volatile Lazy forms = new Lazy(() -> Forms.PLAIN);

    private Dates() {}

    /** Writes days as {@code locale} does from here on, with names in another; as the program itself for the root. */
    public static void use(Locale locale, Locale names) {
        boolean isPlain = locale.getCountry().isEmpty() && (locale.equals(Locale.ROOT) || isEnglish(locale));
        boolean isOwn = (isPlain || isBritish(locale)) && isEnglish(names);
        forms = new Lazy(isOwn ? () -> Forms.PLAIN : () -> Forms.of(isPlain ? names : locale, names));
    }

    /** "3 May". */
    public static DateTimeFormatter day() {
        return forms.get().day;
    }

    /** "3 May", the month abbreviated where its name is long. */
    public static DateTimeFormatter shortDay() {
        return forms.get().shortDay;
    }

    /** "Sunday 3 May". */
    public static DateTimeFormatter longDay() {
        return forms.get().longDay;
    }

    /** "3 February 2026". */
    public static DateTimeFormatter dayAndYear() {
        return forms.get().dayAndYear;
    }

    /** "3 Feb 2026". */
    public static DateTimeFormatter shortDayAndYear() {
        return forms.get().shortDayAndYear;
    }

    /** "20:41", or "8:41 PM". */
    public static DateTimeFormatter clock() {
        return forms.get().clock;
    }

    /** Any other form, in the names and digits of the desk. */
    public static DateTimeFormatter form(String pattern) {
        return forms.get().form(pattern);
    }

    /** Whether a span within one month may leave the month out at its start: "4 to 8 May". */
    public static boolean dayStandsFirst() {
        return forms.get().dayPattern.startsWith("d ");
    }

    /** Whether a date in figures begins with its month. */
    public static boolean monthStandsFirst() {
        return forms.get().dayPattern.startsWith("M");
    }

    public static DayOfWeek firstDayOfWeek() {
        return forms.get().firstDay;
    }

    /** The program's own order is theirs; no locale data need be read as the desk opens. */
    private static boolean isBritish(Locale locale) {
        return locale.getLanguage().equals("en") && locale.getCountry().equals("GB");
    }

    private static boolean isEnglish(Locale locale) {
        return locale.getLanguage().equals("en") || locale.getLanguage().isEmpty();
    }

    /** Forms made when the first day is written: a desk that opens need not wait for locale data it may not show. */
    private static final class Lazy {
        private final Supplier<Forms> maker;
        private volatile @Nullable Forms made;

        Lazy(Supplier<Forms> maker) {
            this.maker = maker;
        }

        Forms get() {
            Forms ready = made;
            if (ready == null) {
                ready = maker.get();
                made = ready;
            }
            return ready;
        }
    }

    /** The forms of one place, with the names of one language. */
    private static final class Forms {
        static final Forms PLAIN = new Forms(
                "d MMMM", "EEEE d MMMM", "d MMMM uuuu", "HH:mm", DayOfWeek.MONDAY, Locale.ENGLISH, Locale.ROOT);

        final String dayPattern;
        final DateTimeFormatter day;
        final DateTimeFormatter shortDay;
        final DateTimeFormatter longDay;
        final DateTimeFormatter dayAndYear;
        final DateTimeFormatter shortDayAndYear;
        final DateTimeFormatter clock;
        final DayOfWeek firstDay;
        private final Locale names;
        private final Locale digits;

        private Forms(
                String dayPattern,
                String longPattern,
                String yearPattern,
                String clockPattern,
                DayOfWeek firstDay,
                Locale names,
                Locale digits) {
            this.names = names;
            this.digits = digits;
            this.dayPattern = dayPattern;
            this.day = form(dayPattern);
            this.shortDay = form(dayPattern.replace("MMMM", "MMM"));
            this.longDay = form(longPattern);
            this.dayAndYear = form(yearPattern);
            this.shortDayAndYear = form(yearPattern.replace("MMMM", "MMM"));
            this.clock = form(clockPattern);
            this.firstDay = firstDay;
        }

        static Forms of(Locale locale, Locale names) {
            String year = pattern(FormatStyle.LONG, null, locale);
            return new Forms(
                    withoutYear(year),
                    withoutYear(pattern(FormatStyle.FULL, null, locale)),
                    year,
                    pattern(null, FormatStyle.SHORT, locale),
                    WeekFields.of(locale).getFirstDayOfWeek(),
                    names,
                    locale);
        }

        DateTimeFormatter form(String pattern) {
            return DateTimeFormatter.ofPattern(pattern, names).withDecimalStyle(DecimalStyle.of(digits));
        }

        private static String pattern(@Nullable FormatStyle date, @Nullable FormatStyle time, Locale locale) {
            return DateTimeFormatterBuilder.getLocalizedDateTimePattern(date, time, IsoChronology.INSTANCE, locale);
        }

        /** Without the year and what only joins it to the rest; the plain order where that cannot be told. */
        private static String withoutYear(String pattern) {
            String rest = withoutFirstYear(pattern);
            boolean isWhole = rest.chars().filter(sign -> sign == '\'').count() % 2 == 0;
            return isWhole && !rest.replaceAll("'[^']*'", "").contains("y") ? rest : "d MMMM";
        }

        private static String withoutFirstYear(String pattern) {
            return pattern.replaceFirst("^(G\\s*)?y+['\\p{L}&&[^MdE]]*[.,\\s年년]*", "")
                    .replaceFirst("[,،]?\\s*('[^']*'\\s*)*(G\\s*)?y+\\s*('[^']*'|[.年년])*(\\s*G)?", "")
                    .strip();
        }
    }
}
