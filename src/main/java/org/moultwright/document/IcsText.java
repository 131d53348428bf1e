package org.moultwright.document;

import java.nio.charset.StandardCharsets;

/** Content lines of RFC 5545. */
final class IcsText {
    /** RFC 5545, 3.1: lines of text are delimited by a line break, which is a CRLF sequence. */
    static final String LINE_BREAK = "\r\n";

    /** RFC 5545, 3.1: lines of text should not be longer than 75 octets, excluding the line break. */
    static final int MOST_OCTETS = 75;

    private IcsText() {}

    /** A property whose value is written as it is. */
    static String line(String name, String value) {
        return folded(name + ":" + value);
    }

    /** A property of the value type TEXT. */
    static String text(String name, String words) {
        return line(name, escaped(words));
    }

    /**
     * RFC 5545, 3.3.11: backslash, semicolon and comma are escaped with a backslash, a line break is a backslash
     * and n. RFC 5545, 3.1: other control characters but the tab have no place in a value.
     */
    static String escaped(String words) {
        StringBuilder escaped = new StringBuilder(words.length());
        words.replace("\r\n", "\n").codePoints().forEach(letter -> {
            switch (letter) {
                case '\\' -> escaped.append("\\\\");
                case ';' -> escaped.append("\\;");
                case ',' -> escaped.append("\\,");
                case '\n' -> escaped.append("\\n");
                default -> {
                    if (letter == '\t' || !Character.isISOControl(letter)) {
                        escaped.appendCodePoint(letter);
                    }
                }
            }
        });
        return escaped.toString();
    }

    /**
     * RFC 5545, 3.1: a long line is split by inserting a CRLF followed by a single linear white-space character,
     * which counts towards the next line. No letter is split, though that would be allowed.
     */
    static String folded(String line) {
        StringBuilder folded = new StringBuilder(line.length() + 16);
        int[] octets = {0};
        line.codePoints().forEach(letter -> {
            String written = Character.toString(letter);
            int more = written.getBytes(StandardCharsets.UTF_8).length;
            if (octets[0] + more > MOST_OCTETS) {
                folded.append(LINE_BREAK).append(' ');
                octets[0] = 1;
            }
            folded.append(written);
            octets[0] += more;
        });
        return folded.append(LINE_BREAK).toString();
    }
}
