package org.moultwright.device.line;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.moultwright.domain.Require;

/**
 * Cuts a stream of bytes into lines.
 *
 * <p>CR and LF both end a line, so CRLF ends one and an empty one; empty lines are passed over. NUL is
 * dropped. Memory stays bounded whatever comes. Not safe for several threads.
 */
public final class LineFramer {
    private final byte[] gathered;
    private int length;
    private boolean tooLong;
    private boolean inStep;

    private LineFramer(int longestBytes, boolean inStep) {
        this.gathered = new byte[Require.atLeast("longestBytes", longestBytes, 1)];
        this.inStep = inStep;
    }

    /** One that starts amid a line, as a port just opened does: what comes before the first end is dropped. */
    public static LineFramer midLine(int longestBytes) {
        return new LineFramer(longestBytes, false);
    }

    /** One that starts where a line starts. */
    public static LineFramer atLineStart(int longestBytes) {
        return new LineFramer(longestBytes, true);
    }

    /** Takes in the first {@code count} bytes and gives the lines they complete. */
    public List<Line> take(byte[] bytes, int count) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (bytes[i] == '\r' || bytes[i] == '\n') {
                end(lines);
            } else if (bytes[i] != 0) {
                gather(bytes[i]);
            }
        }
        return lines;
    }

    private void gather(byte next) {
        if (length < gathered.length) {
            gathered[length++] = next;
        } else {
            tooLong = true;
        }
    }

    private void end(List<Line> lines) {
        if (inStep && length > 0) {
            lines.add(new Line(new String(gathered, 0, length, StandardCharsets.ISO_8859_1), !tooLong));
        }
        inStep = true;
        length = 0;
        tooLong = false;
    }
}
