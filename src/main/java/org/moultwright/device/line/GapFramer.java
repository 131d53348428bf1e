package org.moultwright.device.line;

import java.util.List;

/** Records parted by a silence. One that starts amid a record drops what comes before the first silence. */
final class GapFramer implements Framer {
    private final long gapNanos;
    private final Gathering gathering;
    private boolean inStep;
    private long lastNanos = Long.MIN_VALUE;

    GapFramer(long gapNanos, int longestBytes, boolean amidARecord) {
        this.gapNanos = gapNanos;
        this.gathering = new Gathering(longestBytes);
        this.inStep = !amidARecord;
    }

    @Override
    public List<Line> take(byte[] bytes, int count, long nanos) {
        List<Line> records = quiet(nanos);
        lastNanos = nanos;
        for (int i = 0; i < count && inStep; i++) {
            gathering.add(bytes[i]);
        }
        return records;
    }

    @Override
    public List<Line> quiet(long nanos) {
        if (lastNanos == Long.MIN_VALUE || nanos - lastNanos < gapNanos) {
            return List.of();
        }
        inStep = true;
        return gathering.isEmpty() ? List.of() : List.of(gathering.end());
    }
}
