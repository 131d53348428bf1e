package org.moultwright.device.line;

import java.util.ArrayList;
import java.util.List;

/**
 * Records between a byte that starts one and a byte that ends it, such as STX and ETX; neither is part of it.
 * A start within a record breaks that one off. What stands between records is passed over, and NUL is dropped.
 */
final class MarkedFramer implements Framer {
    private final byte from;
    private final byte to;
    private final Gathering gathering;
    private boolean within;

    MarkedFramer(byte from, byte to, int longestBytes) {
        this.from = from;
        this.to = to;
        this.gathering = new Gathering(longestBytes);
    }

    @Override
    public List<Line> take(byte[] bytes, int count, long nanos) {
        List<Line> records = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            take(bytes[i], records);
        }
        return records;
    }

    private void take(byte next, List<Line> records) {
        if (next == from) {
            if (within && !gathering.isEmpty()) {
                records.add(gathering.breakOff());
            }
            gathering.clear();
            within = true;
        } else if (within && next == to) {
            records.add(gathering.end());
            within = false;
        } else if (within && next != 0) {
            gathering.add(next);
        }
    }
}
