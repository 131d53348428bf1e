package org.moultwright.text;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.moultwright.language.Dates;
import org.moultwright.language.Texts;

/** Days and ages in words, in one keeper's zone. */
public record DayWords(ZoneId zone) {
    private static final Duration WITHOUT_YEARS = Duration.ofDays(300);

    public LocalDate date(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }

    /** "3 May", the month abbreviated where its name is long. */
    public String shortDay(Instant instant) {
        return Dates.shortDay().format(instant.atZone(zone));
    }

    /** "3 February". */
    public String day(Instant instant) {
        return Dates.day().format(instant.atZone(zone));
    }

    /** "Sunday 3 May". */
    public String longDay(Instant instant) {
        return Dates.longDay().format(instant.atZone(zone));
    }

    /** "20:41". */
    public String clock(Instant instant) {
        return Dates.clock().format(instant.atZone(zone));
    }

    /** "4 to 8 May", "28 April to 3 May", "4 May" where both are one day, with years where most of one lies between. */
    public String days(Instant from, Instant to) {
        LocalDate first = date(from);
        LocalDate last = date(to);
        if (first.equals(last)) {
            return day(to);
        }
        if (isLong(from, to)) {
            return Texts.say("{0} to {1}", dayAndYear(from), dayAndYear(to));
        }
        boolean sameMonth =
                Dates.dayStandsFirst() && first.getMonth() == last.getMonth() && first.getYear() == last.getYear();
        return sameMonth
                ? Texts.say("{0} to {1}", first.getDayOfMonth(), day(to))
                : Texts.say("{0} to {1}", day(from), day(to));
    }

    /** "between 4 and 8 May", "between 28 April and 3 May". */
    public String between(Instant from, Instant to) {
        LocalDate first = date(from);
        LocalDate last = date(to);
        if (isLong(from, to)) {
            return Texts.say("between {0} and {1}", dayAndYear(from), dayAndYear(to));
        }
        boolean sameMonth =
                Dates.dayStandsFirst() && first.getMonth() == last.getMonth() && first.getYear() == last.getYear();
        return sameMonth && !first.equals(last)
                ? Texts.say("between {0} and {1}", first.getDayOfMonth(), day(to))
                : Texts.say("between {0} and {1}", day(from), day(to));
    }

    private String dayAndYear(Instant instant) {
        return Dates.dayAndYear().format(instant.atZone(zone));
    }

    /** So far apart that days without their year could be read the wrong way. */
    private static boolean isLong(Instant from, Instant to) {
        return Duration.between(from, to).compareTo(WITHOUT_YEARS) > 0;
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
