package org.moultwright.workflow;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RollUp;
import org.moultwright.domain.RollUpLevel;

/** A reading log that writes down from when on which probe was read. */
final class ReadsOfLog implements ReadingLog {
    private final ReadingLog log;
    private final List<String> reads = new ArrayList<>();

    ReadsOfLog(ReadingLog log) {
        this.log = log;
    }

    List<String> reads() {
        return reads;
    }

    @Override
    public List<Logged> append(String probe, List<Logged> readings) {
        return log.append(probe, readings);
    }

    @Override
    public ReadingSeries series(String probe, Instant from, Instant to) {
        reads.add(probe + " from " + from);
        return log.series(probe, from, to);
    }

    @Override
    public List<RollUp> rollUps(String probe, RollUpLevel level, Instant from, Instant to) {
        return log.rollUps(probe, level, from, to);
    }

    @Override
    public long mark() {
        return log.mark();
    }

    @Override
    public Optional<Instant> earliestSince(String probe, long mark) {
        return log.earliestSince(probe, mark);
    }

    @Override
    public Map<String, Reading> latest() {
        return log.latest();
    }
}
