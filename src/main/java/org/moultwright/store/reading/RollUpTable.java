package org.moultwright.store.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.RollUp;
import org.moultwright.domain.RollUpLevel;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;

/** Roll-ups of packed hours, many in a row. */
final class RollUpTable {
    private static final RowReader<List<RollUp>> SPAN = row -> PackedRollUps.unpack(row.bytes("roll_ups"));

    private RollUpTable() {}

    /** Those of a level in all spans from one to another, both included, in order of time. */
    static List<RollUp> between(Handle handle, int probeNo, RollUpLevel level, long fromSpan, long toSpan) {
        List<RollUp> found = new ArrayList<>();
        handle.createQuery("select roll_ups from roll_up where probe_no = :probe and minutes = :minutes"
                        + " and span_no >= :from_span and span_no <= :to_span order by probe_no, minutes, span_no")
                .bind("probe", probeNo)
                .bind("minutes", level.minutes())
                .bind("from_span", fromSpan)
                .bind("to_span", toSpan)
                .map(SPAN.mapper())
                .forEach(found::addAll);
        return found;
    }

    static Optional<List<RollUp>> find(Handle handle, int probeNo, RollUpLevel level, long spanNo) {
        return handle.createQuery("select roll_ups from roll_up where probe_no = :probe and minutes = :minutes"
                        + " and span_no = :span")
                .bind("probe", probeNo)
                .bind("minutes", level.minutes())
                .bind("span", spanNo)
                .map(SPAN.mapper())
                .findFirst();
    }

    /** Writes those of a span over what is there; a span without any has no row. */
    static void replace(Handle handle, int probeNo, RollUpLevel level, long spanNo, List<RollUp> rollUps) {
        handle.createUpdate("delete from roll_up where probe_no = :probe and minutes = :minutes and span_no = :span")
                .bind("probe", probeNo)
                .bind("minutes", level.minutes())
                .bind("span", spanNo)
                .execute();
        if (rollUps.isEmpty()) {
            return;
        }
        Cells cells = new Cells()
                .with("probe_no", probeNo)
                .with("minutes", level.minutes())
                .with("span_no", spanNo)
                .with("roll_ups", PackedRollUps.pack(rollUps));
        Rows.insert(handle, "roll_up", List.of(cells));
    }

    /** The probes that have packed hours and no roll-ups of them at all, as in a store of before there were any. */
    static List<Integer> missing(Handle handle) {
        return handle.createQuery("select probe_no from probe where exists (select 1 from reading_hour where"
                        + " reading_hour.probe_no = probe.probe_no) and not exists (select 1 from roll_up where"
                        + " roll_up.probe_no = probe.probe_no)")
                .mapTo(Integer.class)
                .list();
    }
}
