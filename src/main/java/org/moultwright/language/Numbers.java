package org.moultwright.language;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Numbers as the keeper writes them: decimal point or comma, digits, signs between thousands. For screens and paper
 * only; files and the store have forms of their own.
 */
public final class Numbers {
    private static volatile Signs signs = Signs.PLAIN;

    private Numbers() {}

    /** Writes numbers as a locale does from here on; as the program itself does for the root locale. */
    public static void use(Locale locale) {
        signs = locale.equals(Locale.ROOT) ? Signs.PLAIN : Signs.of(locale);
    }

    /** "27.50" for two decimals. */
    public static String fixed(double number, int decimals) {
        return signs.of(String.format(Locale.ROOT, "%." + decimals + "f", number));
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

    /** A written number in the form the language of the program reads, for parsing: point, plain digits, no groups. */
    static String plain(String written) {
        return signs.plain(written);
    }

    /** The signs of one locale. */
    private record Signs(char decimal, char group, char zero) {
        static final Signs PLAIN = new Signs('.', ',', '0');

        static Signs of(Locale locale) {
            DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(locale);
            return new Signs(symbols.getDecimalSeparator(), symbols.getGroupingSeparator(), symbols.getZeroDigit());
        }

        String of(String plain) {
            if (equals(PLAIN)) {
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

        String plain(String written) {
            StringBuilder plain = new StringBuilder(written.strip());
            for (int i = 0; i < plain.length(); i++) {
                int digit = Character.digit(plain.charAt(i), 10);
                if (digit >= 0) {
                    plain.setCharAt(i, (char) ('0' + digit));
                } else if (plain.charAt(i) == '−') {
                    plain.setCharAt(i, '-');
                } else if (plain.charAt(i) == ',' || plain.charAt(i) == decimal) {
                    plain.setCharAt(i, '.');
                }
            }
            return plain.toString();
        }
    }
}
