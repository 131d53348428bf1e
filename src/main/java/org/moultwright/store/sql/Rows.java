package org.moultwright.store.sql;

import java.util.List;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Update;

/** Writes rows into a table. */
public final class Rows {
    private Rows() {}

    /** Inserts rows that all have the same columns, in their order. */
    public static void insert(Handle handle, String table, List<Cells> rows) {
        if (rows.isEmpty()) {
            return;
        }
        try (PreparedBatch batch = handle.prepareBatch(insertion(table, rows.get(0)))) {
            for (Cells row : rows) {
                row.bindTo(batch);
                batch.add();
            }
            batch.execute();
        }
    }

    /** Writes a row over the one that has the same key, or adds it. */
    public static void write(Handle handle, String table, String key, Cells row) {
        String changes =
                row.columns().stream().map(column -> column + " = :" + column).collect(Collectors.joining(", "));
        try (Update update =
                handle.createUpdate("update " + table + " set " + changes + " where " + key + " = :" + key)) {
            row.bindTo(update);
            if (update.execute() == 0) {
                insert(handle, table, List.of(row));
            }
        }
    }

    private static String insertion(String table, Cells row) {
        String columns = String.join(", ", row.columns());
        String parameters = row.columns().stream().map(column -> ":" + column).collect(Collectors.joining(", "));
        return "insert into " + table + " (" + columns + ") values (" + parameters + ")";
    }
}
