package org.moultwright.device.line;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a stream of bytes into lines.
 *
 * <p>CR and LF both end a line, so CRLF ends one and an empty one; empty lines are passed over. NUL is
 * dropped.
 */
public final class LineFramer implements Framer {
    private final Gathering gathering;
    private boolean inStep;

    private LineFramer(int longestBytes, boolean inStep) {
        this.gathering = new Gathering(longestBytes);
        this.inStep = inStep;
    }

    /**
     * One for a stream.
     *
     * @param amidALine whether it starts amid a line, as a port just opened does: what comes before the first
     *     end is dropped
     */
    static LineFramer start(boolean amidALine, int longestBytes) {
        return new LineFramer(longestBytes, !amidALine);
    }

    @Override
    public List<Line> take(byte[] bytes, int count, long nanos) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (bytes[i] == '\r' || bytes[i] == '\n') {
                end(lines);
            } else if (bytes[i] != 0) {
                gathering.add(bytes[i]);
            }
        }
        return lines;
    }

    private void end(List<Line> lines) {
        if (inStep && !gathering.isEmpty()) {
            lines.add(gathering.end());
        }
        inStep = true;
        gathering.clear();
    }
}
