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
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,4}([.,]\\d*)?|[.,]\\d+)");
    private static final char MINUS = '\u2212';
    private static final char ARABIC_DECIMAL = '\u066B';
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2})[:.]?(\\d{2})");

    private Typed() {}

    /** A number with a decimal point or comma, which may come first or last: 27.5, 27, 27. and .5. */
    public static OptionalDouble number(String text) {
        String plain = plainFigures(text).strip();
        return NUMBER.matcher(plain).matches()
                ? OptionalDouble.of(Double.parseDouble(plain.replace(',', '.')))
                : OptionalDouble.empty();
    }

    /** The same in the program's own figures, whatever digits, minus and decimal sign it was typed with. */
    static String plainFigures(String text) {
        return text.codePoints()
                .map(Typed::plainSign)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static int plainSign(int sign) {
        return switch (sign) {
            case MINUS -> '-';
            case ARABIC_DECIMAL -> ',';
            default -> Character.digit(sign, 10) < 0 ? sign : '0' + Character.digit(sign, 10);
        };
    }

    /** A temperature in the keeper's unit, as °C. */
    public static OptionalDouble temperature(String text) {
        OptionalDouble shown = number(text);
        return shown.isPresent() ? OptionalDouble.of(Degrees.celsius(shown.getAsDouble())) : shown;
    }

    /** A time of day: 20:41, 20.41, 2041. */
    public static Optional<LocalTime> clock(String text) {
        Matcher found = CLOCK.matcher(plainFigures(text.strip()));
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
