package org.moultwright.store.book;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;

/**
 * A table of what was written down of broods, row by row, each with the deed it belongs to.
 *
 * @param <T> what a row says
 */
abstract class EventTable<T> {
    private static final String STANDING =
            " and not exists (select 1 from deed undoing where undoing.undoes = %s.deed)";

    private final String name;

    EventTable(String name) {
        this.name = name;
    }

    /** The cells of a row, without its brood and deed. */
    abstract Cells cells(T row);

    abstract RowReader<T> reader(Handle handle, String brood);

    /** What names a row for ever, wherever it was written first. */
    abstract Object identity(T row);

    /** What makes two rows say the same, their identities aside. */
    abstract Object content(T row);

    String name() {
        return name;
    }

    /** Every row ever written of a brood, in the order written. */
    final List<T> all(Handle handle, String brood) {
        return select(handle, brood, "");
    }

    /** The rows of a brood that no deed withdrew. */
    final List<T> standing(Handle handle, String brood) {
        return select(handle, brood, STANDING.formatted(name));
    }

    /** The rows a deed brought of one brood. */
    final List<T> ofDeed(Handle handle, String brood, UUID deed) {
        return handle.createQuery("select * from " + name + " where deed = :deed and brood = :brood order by row_no")
                .bind("deed", deed)
                .bind("brood", brood)
                .map(reader(handle, brood).mapper())
                .list();
    }

    /** The broods of which a deed brought rows. */
    final List<String> broodsOf(Handle handle, UUID deed) {
        return handle.createQuery("select distinct brood from " + name + " where deed = :deed order by brood")
                .bind("deed", deed)
                .mapTo(String.class)
                .list();
    }

    void insert(Handle handle, String brood, Optional<UUID> deed, List<T> rows) {
        Rows.insert(
                handle,
                name,
                rows.stream()
                        .map(row -> cells(row).with("brood", brood).with("deed", deed))
                        .toList());
    }

    /** Inserts the rows that are not there yet, by identity or, each row once, by content. */
    final int takeIn(Handle handle, String brood, List<T> rows) {
        Set<Object> identities = new HashSet<>();
        Map<Object, Integer> contents = new HashMap<>();
        for (T stored : all(handle, brood)) {
            identities.add(identity(stored));
            contents.merge(content(stored), 1, Integer::sum);
        }
        rows.stream()
                .filter(row -> identities.contains(identity(row)))
                .forEach(row -> contents.merge(content(row), -1, Integer::sum));
        List<T> missing = rows.stream()
                .filter(row -> !identities.contains(identity(row)))
                .filter(row -> contents.merge(content(row), -1, Integer::sum) < 0)
                .toList();
        insert(handle, brood, Optional.empty(), missing);
        return missing.size();
    }

    private List<T> select(Handle handle, String brood, String condition) {
        return handle.createQuery("select * from " + name + " where brood = :brood" + condition + " order by row_no")
                .bind("brood", brood)
                .map(reader(handle, brood).mapper())
                .list();
    }
}
