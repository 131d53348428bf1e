package org.moultwright.device.profile;

import java.nio.ByteBuffer;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.moultwright.device.check.Hex;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/** How the text of a group stands for a number. */
@FunctionalInterface
interface Encoding {

    /** The number, NaN where the text stands for none. */
    double number(String text);

    /**
     * The encoding a profile names: {@code decimal}, or hexadecimal digits of bytes: {@code u8}, {@code s8}, and
     * {@code u16}, {@code s16}, {@code u32}, {@code s32}, {@code f32} with the order the bytes come in, A being
     * the most significant: {@code s16 BA}, {@code f32 CDAB}.
     */
    static Encoding of(String words) {
        if (words.equals("decimal")) {
            return Decimal::number;
        }
        Matcher binary = Binary.WORDS.matcher(words);
        Require.that(
                binary.matches() && Binary.ORDERS.contains(order(binary.group(2))),
                Texts.say(
                        "as '{0}' but must be decimal, u8, s8, or u16, s16, u32, s32, f32 with an order of bytes "
                                + "such as AB or CDAB",
                        words));
        Binary encoding = new Binary(binary.group(1), order(binary.group(2)));
        Require.that(
                encoding.bits() == encoding.order().length() * 8,
                Texts.say("as '{0}' but the order must name {1} bytes", words, encoding.bits() / 8));
        return encoding;
    }

    private static String order(@Nullable String named) {
        return named == null ? "A" : named;
    }

    /** Decimal numbers with a point or a comma. */
    final class Decimal {
        private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?");

        private Decimal() {}

        private static double number(String text) {
            String pointed = text.strip().replace(',', '.');
            return NUMBER.matcher(pointed).matches() ? Double.parseDouble(pointed) : Double.NaN;
        }
    }

    /**
     * Bytes in hexadecimal digits.
     *
     * @param type of number
     * @param order the order its bytes come in
     */
    record Binary(String type, String order) implements Encoding {
        private static final double LEAST = 1e-6;
        private static final Pattern WORDS = Pattern.compile("([us]8|[us]16|[us]32|f32)(?: ([A-D]{2,4}))?");
        private static final List<String> ORDERS = List.of("A", "AB", "BA", "ABCD", "CDAB", "BADC", "DCBA");

        int bits() {
            return Integer.parseInt(type.substring(1));
        }

        @Override
        public double number(String text) {
            byte[] bytes = Hex.bytes(text);
            if (bytes.length != order.length()) {
                return Double.NaN;
            }
            int value = inOrder(bytes);
            int unused = Integer.SIZE - bits();
            return switch (type.charAt(0)) {
                case 'f' -> decimal(Float.intBitsToFloat(value));
                case 's' -> value << unused >> unused;
                default -> Integer.toUnsignedLong(value);
            };
        }

        private int inOrder(byte[] bytes) {
            ByteBuffer sorted = ByteBuffer.allocate(Integer.BYTES);
            int first = Integer.BYTES - bytes.length;
            for (int i = 0; i < bytes.length; i++) {
                sorted.put(first + order.charAt(i) - 'A', bytes[i]);
            }
            return sorted.getInt(0);
        }

        /**
         * The shortest decimal that means the same float, which is what was told: 25.7, not 25.700000762939453. A
         * number next to nothing is none: it is what a wrong order of bytes looks like.
         */
        private static double decimal(float value) {
            return value != 0 && Math.abs(value) < LEAST ? Double.NaN : Double.parseDouble(Float.toString(value));
        }
    }
}
