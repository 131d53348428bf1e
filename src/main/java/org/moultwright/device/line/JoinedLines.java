package org.moultwright.device.line;

import java.util.ArrayList;
import java.util.List;

/**
 * So many lines to a record, joined by LF: an instrument that answers each of several questions with a line of
 * its own. Asking anew starts a record anew, so a lost line spoils no more than one.
 */
final class JoinedLines implements Framer {
    private final LineFramer framer;
    private final int linesARecord;
    private final List<Line> waiting = new ArrayList<>();

    JoinedLines(LineFramer framer, int linesARecord) {
        this.framer = framer;
        this.linesARecord = linesARecord;
    }

    @Override
    public List<Line> take(byte[] bytes, int count, long nanos) {
        List<Line> records = new ArrayList<>();
        for (Line line : framer.take(bytes, count, nanos)) {
            waiting.add(line);
            if (waiting.size() == linesARecord) {
                records.add(joined(waiting.stream().allMatch(Line::whole)));
            }
        }
        return records;
    }

    @Override
    public List<Line> asked(byte[] request) {
        return waiting.isEmpty() ? List.of() : List.of(joined(false));
    }

    private Line joined(boolean whole) {
        Line record =
                new Line(String.join("\n", waiting.stream().map(Line::text).toList()), whole);
        waiting.clear();
        return record;
    }
}
