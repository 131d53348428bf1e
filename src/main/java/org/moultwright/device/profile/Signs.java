package org.moultwright.device.profile;

/**
 * The signs instruments write in several ways, brought to one. Lines are bytes read as ISO-8859-1; a degree
 * sign in UTF-8, ISO-8859-1 or code page 437 becomes °, the minus sign U+2212 in UTF-8 becomes a hyphen.
 */
final class Signs {
    private static final String UTF8_MINUS = "\u00e2\u0088\u0092";
    private static final String UTF8_DEGREE = "\u00c2\u00b0";
    private static final String CP437_DEGREE = "\u00f8";

    private Signs() {}

    static String plain(String line) {
        return line.replace(UTF8_MINUS, "-").replace(UTF8_DEGREE, "\u00b0").replace(CP437_DEGREE, "\u00b0");
    }
}
