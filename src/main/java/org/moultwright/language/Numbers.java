package org.moultwright.language;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Numbers as the keeper writes them: decimal point or comma, digits, signs between thousands. For screens and paper
 * only; files and the store have forms of their own.
 */
public final class Numbers {
    /** Where English is written with the program's own signs, so that no locale data need be read as the desk opens. */
    private static final Set<String> PLAIN_PLACES = Set.of("", "GB", "US", "IE", "CA", "AU", "NZ");

    private static volatile Signs signs = Signs.PLAIN;

    private Numbers() {}

    /** Writes numbers as a locale does from here on; as the program itself does for the root locale. */
    public static void use(Locale locale) {
        signs = PLAIN_PLACES.contains(locale.getCountry()) && isPlain(locale) ? Signs.PLAIN : Signs.of(locale);
    }

    private static boolean isPlain(Locale locale) {
        return locale.equals(Locale.ROOT) || locale.getLanguage().equals("en");
    }

    /** "27.50" for two decimals; what rounds to nothing has no sign. */
    public static String fixed(double number, int decimals) {
        String plain = String.format(Locale.ROOT, "%." + decimals + "f", number);
        boolean isNothing = plain.startsWith("-0") && plain.chars().noneMatch(sign -> sign >= '1' && sign <= '9');
        return signs.of(isNothing ? plain.substring(1) : plain);
    }

    /** "+0.30", "-0.30". */
    public static String signed(double number, int decimals) {
        return signs.of(String.format(Locale.ROOT, "%+." + decimals + "f", number));
    }

    /** "1,234". */
    public static String grouped(long number) {
        return signs.of(String.format(Locale.ROOT, "%,d", number));
    }

    /** As short as it can be said: "27" and "27.5", at most so many decimals. */
    public static String shortest(double number, int mostDecimals) {
        if (Double.isNaN(number) || Double.isInfinite(number)) {
            return fixed(number, mostDecimals);
        }
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(mostDecimals, RoundingMode.HALF_UP);
        BigDecimal stripped = rounded.stripTrailingZeros();
        return signs.of(stripped.scale() < 0 ? stripped.toBigInteger().toString() : stripped.toPlainString());
    }

    /** What stands in a place of a text: numbers in the keeper's form, all else as it is. */
    static String shown(@Nullable Object place) {
        return place instanceof Number ? signs.of(place.toString()) : String.valueOf(place);
    }

    /** The signs of one locale. */
    private record Signs(char decimal, char group, char zero) {
        static final Signs PLAIN = new Signs('.', ',', '0');

        static Signs of(Locale locale) {
            DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(locale);
            return new Signs(symbols.getDecimalSeparator(), symbols.getGroupingSeparator(), symbols.getZeroDigit());
        }

        /** Told sign by sign: a record's own comparison is costly to begin with, and a desk that opens writes numbers. */
        private boolean isPlain() {
            return decimal == PLAIN.decimal && group == PLAIN.group && zero == PLAIN.zero;
        }

        String of(String plain) {
            if (isPlain()) {
                return plain;
            }
            StringBuilder shown = new StringBuilder(plain);
            for (int i = 0; i < shown.length(); i++) {
                char sign = shown.charAt(i);
                if (sign == '.') {
                    shown.setCharAt(i, decimal);
                } else if (sign == ',') {
                    shown.setCharAt(i, group);
                } else if (sign >= '0' && sign <= '9') {
                    shown.setCharAt(i, (char) (zero + (sign - '0')));
                }
            }
            return shown.toString();
        }
    }
}
