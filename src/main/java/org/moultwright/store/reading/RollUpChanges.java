package org.moultwright.store.reading;

import static java.util.stream.Collectors.toSet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
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
        Set<Long> hours =
                quartersByHour.keySet().stream().map(Hours::startMillis).collect(toSet());
        Set<Long> days = hours.stream().map(RollUpLevel.DAY::startMillis).collect(toSet());
        List<RollUp> quarters =
                quartersByHour.values().stream().flatMap(List::stream).toList();
        quartersByHour.clear();
        replace(RollUpLevel.QUARTER_HOUR, hours, RollUpLevel.HOUR, quarters);
        List<RollUp> ofDays =
                replace(RollUpLevel.HOUR, hours, RollUpLevel.HOUR, RollUps.coarser(quarters, RollUpLevel.HOUR)).stream()
                        .filter(rollUp -> days.contains(RollUpLevel.DAY.startMillis(rollUp.startMillis())))
                        .toList();
        replace(RollUpLevel.DAY, days, RollUpLevel.DAY, RollUps.coarser(ofDays, RollUpLevel.DAY));
    }

    /**
     * Puts roll-ups in the place of all that lie in some stretches of time, and gives all those of every span touched.
     *
     * @param starts where the stretches begin
     * @param stretch how long each is
     */
    private List<RollUp> replace(RollUpLevel level, Set<Long> starts, RollUpLevel stretch, List<RollUp> fresh) {
        TreeMap<Long, List<RollUp>> spans = new TreeMap<>();
        starts.forEach(start -> spans.computeIfAbsent(RollUpSpan.of(level, start), span -> new ArrayList<>()));
        fresh.forEach(rollUp -> spans.getOrDefault(RollUpSpan.of(level, rollUp.startMillis()), new ArrayList<>())
                .add(rollUp));
        List<RollUp> touched = new ArrayList<>();
        spans.forEach((span, ofSpan) -> {
            List<RollUp> whole = new ArrayList<>(ofSpan);
            RollUpTable.find(handle, probeNo, level, span).orElse(List.of()).stream()
                    .filter(rollUp -> !starts.contains(stretch.startMillis(rollUp.startMillis())))
                    .forEach(whole::add);
            whole.sort(Comparator.comparingLong(RollUp::startMillis));
            RollUpTable.replace(handle, probeNo, level, span, whole);
            touched.addAll(whole);
        });
        return touched;
    }
}
