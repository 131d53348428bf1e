package org.moultwright.store.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RollUp;
import org.moultwright.domain.RollUpLevel;
import org.moultwright.domain.RollUps;

/**
 * Packed hours of one probe whose readings are others now, and what follows for the roll-ups kept of them.
 * Within the transaction that packed them, so that both are on disk or neither. Not safe to share.
 */
final class RollUpChanges {
    /** So many hours together cost a row of each level little more than one. */
    private static final int MOST_HOURS = RollUpSpan.ROLL_UPS;

    private final Handle handle;
    private final int probeNo;
    private final TreeMap<Long, List<RollUp>> quartersByHour = new TreeMap<>();

    RollUpChanges(Handle handle, int probeNo) {
        this.handle = handle;
        this.probeNo = probeNo;
    }

    /** An hour is packed, and this is now all that is in it. */
    void add(long hourNo, ReadingSeries readings) {
        quartersByHour.put(hourNo, RollUps.of(readings, RollUpLevel.QUARTER_HOUR));
        if (quartersByHour.size() >= MOST_HOURS) {
            write();
        }
    }

    /** Writes what is not written yet. */
    void write() {
        List<RollUp> quarters = new ArrayList<>();
        quartersByHour.values().forEach(quarters::addAll);
        quartersByHour.clear();
        List<RollUp> hours = RollUps.coarser(quarters, RollUpLevel.HOUR);
        bySpan(quarters, RollUpLevel.QUARTER_HOUR);
        List<RollUp> days = new ArrayList<>();
        bySpan(hours, RollUpLevel.HOUR).forEach(span -> days.addAll(RollUps.coarser(span, RollUpLevel.DAY)));
        bySpan(days, RollUpLevel.DAY);
    }

    /** Puts roll-ups in the place of those of the same beginnings, and gives all those of every span touched. */
    private List<List<RollUp>> bySpan(List<RollUp> fresh, RollUpLevel level) {
        TreeMap<Long, List<RollUp>> spans = new TreeMap<>();
        fresh.forEach(
                rollUp -> spans.computeIfAbsent(RollUpSpan.of(level, rollUp.startMillis()), span -> new ArrayList<>())
                        .add(rollUp));
        List<List<RollUp>> touched = new ArrayList<>();
        spans.forEach((span, ofSpan) -> {
            TreeMap<Long, RollUp> whole = new TreeMap<>();
            RollUpTable.find(handle, probeNo, level, span)
                    .ifPresent(kept -> kept.forEach(rollUp -> whole.put(rollUp.startMillis(), rollUp)));
            ofSpan.forEach(rollUp -> whole.put(rollUp.startMillis(), rollUp));
            List<RollUp> all = List.copyOf(whole.values());
            RollUpTable.replace(handle, probeNo, level, span, all);
            touched.add(all);
        });
        return touched;
    }
}
