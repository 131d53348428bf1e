package org.moultwright.ui.control;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.language.Degrees;

/** What the keeper typed, as numbers and instants. */
public final class Typed {
    private static final Pattern NUMBER = Pattern.compile("([+\\-\u2212]?)(\\d{1,4})(?:[.,](\\d{1,6}))?");
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2})[:.]?(\\d{2})");

    private Typed() {}

    /** A number with a decimal point or comma. */
    public static OptionalDouble number(String text) {
        Matcher found = NUMBER.matcher(plainDigits(text.strip()));
        if (!found.matches()) {
            return OptionalDouble.empty();
        }
        String decimals = found.group(3) == null ? "0" : found.group(3);
        double size = Double.parseDouble(found.group(2) + "." + decimals);
        return OptionalDouble.of(found.group(1).isEmpty() || found.group(1).equals("+") ? size : -size);
    }

    /** The same with digits 0 to 9, whatever digits it was typed in. */
    static String plainDigits(String text) {
        return text.codePoints()
                .map(sign -> Character.digit(sign, 10) < 0 ? sign : '0' + Character.digit(sign, 10))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** A temperature in the keeper's unit, as °C. */
    public static OptionalDouble temperature(String text) {
        OptionalDouble shown = number(text);
        return shown.isPresent() ? OptionalDouble.of(Degrees.celsius(shown.getAsDouble())) : shown;
    }

    /** A time of day: 20:41, 20.41, 2041. */
    public static Optional<LocalTime> clock(String text) {
        Matcher found = CLOCK.matcher(plainDigits(text.strip()));
        try {
            return found.matches()
                    ? Optional.of(LocalTime.of(Integer.parseInt(found.group(1)), Integer.parseInt(found.group(2))))
                    : Optional.empty();
        } catch (DateTimeException noSuchTime) {
            return Optional.empty();
        }
    }

    /**
     * The instant of a time of day; of the two of an hour that comes twice the latest that is not ahead. Empty for an
     * hour clocks leap over.
     */
    public static Optional<Instant> instant(LocalDate day, LocalTime time, ZoneId zone, Instant now) {
        LocalDateTime shown = day.atTime(time);
        List<Instant> candidates = zone.getRules().getValidOffsets(shown).stream()
                .map((ZoneOffset offset) -> shown.toInstant(offset))
                .toList();
        return candidates.stream()
                .filter(at -> !at.isAfter(now))
                .reduce((earlier, later) -> later)
                .or(() -> candidates.stream().findFirst());
    }
}
