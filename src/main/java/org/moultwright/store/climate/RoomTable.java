package org.moultwright.store.climate;

import java.util.List;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;

/**
 * A table of what deeds wrote down of the room's instruments.
 *
 * @param <T> what a row says
 */
public abstract class RoomTable<T> {
    private final String name;

    protected RoomTable(String name) {
        this.name = name;
    }

    /** The cells of a row, without its deed. */
    protected abstract Cells cells(T row);

    protected abstract RowReader<T> reader(Handle handle);

    /** Every row ever written, in the order written. */
    public final List<T> all(Handle handle) {
        return select(handle, "");
    }

    /** The rows that no deed withdrew, in the order written. */
    public final List<T> standing(Handle handle) {
        return standing(handle, "true");
    }

    /** Of these rows those that no deed withdrew, in the order written. */
    final List<T> standing(Handle handle, String condition) {
        return select(
                handle,
                " where %s and not exists (select 1 from deed undoing where undoing.undoes = %s.deed)"
                        .formatted(condition, name));
    }

    public final List<T> ofDeed(Handle handle, UUID deed) {
        return handle.createQuery("select * from " + name + " where deed = :deed order by row_no")
                .bind("deed", deed)
                .map(reader(handle).mapper())
                .list();
    }

    private List<T> select(Handle handle, String condition) {
        return handle.createQuery("select * from " + name + condition + " order by row_no")
                .map(reader(handle).mapper())
                .list();
    }

    public void insert(Handle handle, UUID deed, List<T> rows) {
        Rows.insert(
                handle,
                name,
                rows.stream().map(row -> cells(row).with("deed", deed)).toList());
    }
}
