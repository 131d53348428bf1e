package org.moultwright.store.spool;

import java.util.List;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.Rows;

/** How far each spool is taken in. */
final class SpoolTable {
    private SpoolTable() {}

    static long takenBytes(Handle handle, UUID spool) {
        return handle.createQuery("select taken_bytes from spool where id = :id")
                .bind("id", spool)
                .mapTo(Long.class)
                .findFirst()
                .orElse(0L);
    }

    static void take(Handle handle, UUID spool, long untilBytes) {
        forget(handle, spool);
        Cells cells = new Cells().with("id", spool).with("taken_bytes", untilBytes);
        Rows.insert(handle, "spool", List.of(cells));
    }

    static int forget(Handle handle, UUID spool) {
        return handle.createUpdate("delete from spool where id = :id")
                .bind("id", spool)
                .execute();
    }
}
