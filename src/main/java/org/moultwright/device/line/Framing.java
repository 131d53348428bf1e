package org.moultwright.device.line;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.domain.Require;

/** How a stream falls into records. */
@FunctionalInterface
public interface Framing {

    /** A framer for a stream that may start amid a record, or that starts where a record does. */
    Framer start(boolean amidARecord, int longestBytes);

    /**
     * The framing a profile names: {@code line}; {@code lines 2}, so many lines to a record; {@code from 02 to
     * 03}, bytes that start and end one; {@code fixed 9}, so many bytes; {@code gap 5 ms}, so long a silence;
     * {@code modbus}, by the length each record tells and its check.
     *
     * @throws IllegalArgumentException if it is none of these
     */
    static Framing of(String words) {
        Matcher found = Words.PATTERN.matcher(words);
        Require.that(
                found.matches(),
                "framing is '%s' but must be 'line', 'lines 2', 'from 02 to 03', 'fixed 9', 'gap 5 ms' or 'modbus'"
                        .formatted(words));
        if (found.group("lines") != null) {
            int lines = Integer.parseInt(found.group("lines"));
            return (amid, longest) -> new JoinedLines(LineFramer.start(amid, longest), lines);
        }
        if (found.group("from") != null) {
            byte from = (byte) Integer.parseInt(found.group("from"), 16);
            byte to = (byte) Integer.parseInt(found.group("to"), 16);
            return (amid, longest) -> new MarkedFramer(from, to, longest);
        }
        if (found.group("fixed") != null) {
            int length = Integer.parseInt(found.group("fixed"));
            return (amid, longest) -> new FixedFramer(length, amid);
        }
        if (found.group("gap") != null) {
            long gapNanos = Long.parseLong(found.group("gap")) * 1_000_000;
            return (amid, longest) -> new GapFramer(gapNanos, longest, amid);
        }
        return words.equals("modbus") ? (amid, longest) -> new ModbusFramer() : LineFramer::start;
    }

    /** How framings are written. */
    final class Words {
        private static final String BYTE = "([0-9A-Fa-f]{2})";
        private static final Pattern PATTERN = Pattern.compile("line|modbus|lines (?<lines>[2-9])"
                + "|from (?<from>" + BYTE + ") to (?<to>" + BYTE + ")"
                + "|fixed (?<fixed>[1-9]\\d{0,2})|gap (?<gap>[1-9]\\d{0,3}) ms");

        private Words() {}
    }

    /** The same stream cut at once, as a whole and from its start. */
    default List<Line> cut(byte[] stream, int longestBytes) {
        Framer framer = start(false, longestBytes);
        List<Line> lines = new ArrayList<>(framer.take(stream, stream.length, 0));
        lines.addAll(framer.quiet(Long.MAX_VALUE));
        return lines;
    }
}
