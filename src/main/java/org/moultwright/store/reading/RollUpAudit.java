package org.moultwright.store.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RollUp;
import org.moultwright.domain.RollUpLevel;
import org.moultwright.domain.RollUps;
import org.moultwright.store.sql.Problem;

/** Compares the roll-ups kept of one probe with what its packed hours come to. Not safe to share. */
final class RollUpAudit {
    private static final long EARLIEST = Long.MIN_VALUE / 2;
    private static final long LATEST = Long.MAX_VALUE / 2;

    private final String probe;
    private final List<Problem> problems = new ArrayList<>();
    private final List<RollUp> quarters;
    private final Map<Long, RollUp> uncompared = new HashMap<>();
    private final List<RollUp> hours;
    private final List<RollUp> days;

    RollUpAudit(Handle handle, String probe, int probeNo) {
        this.probe = probe;
        this.quarters = kept(handle, probeNo, RollUpLevel.QUARTER_HOUR);
        this.hours = kept(handle, probeNo, RollUpLevel.HOUR);
        this.days = kept(handle, probeNo, RollUpLevel.DAY);
        quarters.forEach(quarter -> uncompared.put(quarter.startMillis(), quarter));
    }

    void compare(long hourNo, ReadingSeries readings) {
        boolean isSame = true;
        for (RollUp made : RollUps.of(readings, RollUpLevel.QUARTER_HOUR)) {
            isSame &= made.equals(uncompared.remove(made.startMillis()));
        }
        if (!isSame) {
            note("hour " + hourNo, "its roll-ups must come to its readings");
        }
    }

    List<Problem> problems() {
        if (!uncompared.isEmpty()) {
            note(uncompared.size() + " quarter hours", "there must be readings behind them");
        }
        if (!RollUps.coarser(quarters, RollUpLevel.HOUR).equals(hours)) {
            note("hours", "they must come to their quarter hours");
        }
        if (!RollUps.coarser(hours, RollUpLevel.DAY).equals(days)) {
            note("days", "they must come to their hours");
        }
        return problems;
    }

    private List<RollUp> kept(Handle handle, int probeNo, RollUpLevel level) {
        try {
            return RollUpTable.between(handle, probeNo, level, EARLIEST, LATEST);
        } catch (IllegalArgumentException damaged) {
            note("every " + level.minutes() + " minutes", String.valueOf(damaged.getMessage()));
            return List.of();
        }
    }

    private void note(String where, String expected) {
        problems.add(new Problem("roll_up", "probe " + probe + ", " + where, expected));
    }
}
