package org.moultwright.store.reading;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;
import org.moultwright.workflow.ProbeIdentity;

/** Which sensor spoke as a probe, from when on: what was measured in a stay of the probe, that sensor measured. */
public final class ProbeSensors {
    private static final RowReader<String> SENSOR = row -> row.text("sensor");

    private ProbeSensors() {}

    /** Writes down that a sensor speaks as a probe from an instant on, unless it is the one that spoke then. */
    public static boolean write(Handle handle, String probe, ProbeIdentity sensor, Instant from) {
        if (at(handle, probe, from).filter(sensor::equals).isPresent()) {
            return false;
        }
        ProbeTable.numberOf(handle, probe);
        Cells cells =
                new Cells().with("probe", probe).with("sensor", sensor.words()).with("from_at", from);
        Rows.insert(handle, "probe_sensor", List.of(cells));
        return true;
    }

    /** The sensor that spoke as a probe at an instant, if it told who it is. */
    public static Optional<ProbeIdentity> at(Handle handle, String probe, Instant at) {
        return handle.createQuery("select sensor from probe_sensor where probe = :probe and from_at <= :at"
                        + " order by from_at desc, row_no desc fetch first 1 row only")
                .bind("probe", probe)
                .bind("at", at.atOffset(ZoneOffset.UTC))
                .map(SENSOR.mapper())
                .findFirst()
                .flatMap(ProbeIdentity::fromWords);
    }
}
