package org.moultwright.store.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.Rows;

/** The probes, each with a short number for the many rows that name it. */
public final class ProbeTable {
    private ProbeTable() {}

    /** The number of a probe, which is written down if it is new. */
    public static int numberOf(Handle handle, String code) {
        return find(handle, code).orElseGet(() -> {
            Rows.insert(handle, "probe", List.of(new Cells().with("code", code)));
            return find(handle, code).orElseThrow();
        });
    }

    static Optional<Integer> find(Handle handle, String code) {
        return handle.createQuery("select probe_no from probe where code = :code")
                .bind("code", code)
                .mapTo(Integer.class)
                .findFirst();
    }

    /** All probes' numbers by code. */
    static Map<String, Integer> all(Handle handle) {
        Map<String, Integer> numbers = new TreeMap<>();
        handle.createQuery("select probe_no, code from probe")
                .map((cells, context) -> numbers.put(cells.getString("code"), cells.getInt("probe_no")))
                .list();
        return numbers;
    }
}
