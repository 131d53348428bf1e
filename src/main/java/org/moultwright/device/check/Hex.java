package org.moultwright.device.check;

import java.util.HexFormat;
import java.util.regex.Pattern;

/** Bytes as pairs of hexadecimal digits. */
public final class Hex {
    private static final HexFormat FORMAT = HexFormat.of().withUpperCase();
    private static final Pattern BETWEEN = Pattern.compile("[\\s:,;.-]+");

    private Hex() {}

    /** The digits, without anything between them. */
    public static String of(byte[] bytes) {
        return FORMAT.formatHex(bytes);
    }

    /**
     * The bytes; space and punctuation between digits mean nothing.
     *
     * @throws IllegalArgumentException if these are no pairs of digits
     */
    public static byte[] bytes(String digits) {
        return FORMAT.parseHex(BETWEEN.matcher(digits).replaceAll(""));
    }
}
