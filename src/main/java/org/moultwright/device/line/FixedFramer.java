package org.moultwright.device.line;

import java.util.ArrayList;
import java.util.List;

/**
 * Records of so many bytes. Only a silence tells where one starts: what comes before the first is dropped, and
 * what a silence breaks off is no record.
 */
final class FixedFramer implements Framer {
    private static final long SILENCE_NANOS = 50_000_000;

    private final int lengthBytes;
    private final Gathering gathering;
    private boolean inStep;
    private long lastNanos = Long.MIN_VALUE;

    FixedFramer(int lengthBytes, boolean amidARecord) {
        this.lengthBytes = lengthBytes;
        this.gathering = new Gathering(lengthBytes);
        this.inStep = !amidARecord;
    }

    @Override
    public List<Line> take(byte[] bytes, int count, long nanos) {
        List<Line> records = new ArrayList<>(quiet(nanos));
        lastNanos = nanos;
        for (int i = 0; i < count && inStep; i++) {
            gathering.add(bytes[i]);
            if (gathering.length() == lengthBytes) {
                records.add(gathering.end());
            }
        }
        return records;
    }

    @Override
    public List<Line> quiet(long nanos) {
        if (lastNanos == Long.MIN_VALUE || nanos - lastNanos < SILENCE_NANOS) {
            return List.of();
        }
        inStep = true;
        return gathering.isEmpty() ? List.of() : List.of(gathering.breakOff());
    }
}
