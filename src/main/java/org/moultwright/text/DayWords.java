package org.moultwright.text;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.moultwright.language.Texts;

/** Days and ages in words, in one keeper's zone. */
public record DayWords(ZoneId zone) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT_DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter LONG_DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    public LocalDate date(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }

    /** "3 May", the month abbreviated where its name is long. */
    public String shortDay(Instant instant) {
        return SHORT_DAY.format(instant.atZone(zone));
    }

    /** "3 February". */
    public String day(Instant instant) {
        return DAY.format(instant.atZone(zone));
    }

    /** "Sunday 3 May". */
    public String longDay(Instant instant) {
        return LONG_DAY.format(instant.atZone(zone));
    }

    /** "20:41". */
    public String clock(Instant instant) {
        return CLOCK.format(instant.atZone(zone));
    }

    /** "4 to 8 May", "28 April to 3 May", or "4 May" where both are one day. */
    public String days(Instant from, Instant to) {
        LocalDate first = date(from);
        LocalDate last = date(to);
        if (first.equals(last)) {
            return day(to);
        }
        boolean sameMonth = first.getMonth() == last.getMonth() && first.getYear() == last.getYear();
        return sameMonth
                ? Texts.say("{0} to {1}", first.getDayOfMonth(), day(to))
                : Texts.say("{0} to {1}", day(from), day(to));
    }

    /** "40 s", "12 min", "3 h", "5 days": the age of something, in its largest whole unit. */
    public static String age(Duration age) {
        if (age.compareTo(Duration.ofMinutes(2)) < 0) {
            return Math.max(0, age.toSeconds()) + " s";
        }
        if (age.compareTo(Duration.ofHours(2)) < 0) {
            return age.toMinutes() + " min";
        }
        return age.compareTo(Duration.ofDays(2)) < 0 ? age.toHours() + " h" : Texts.say("{0} days", age.toDays());
    }
}
