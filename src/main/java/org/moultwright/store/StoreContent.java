package org.moultwright.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.h2.mvstore.MVStore;
import org.h2.mvstore.db.ValueDataType;
import org.h2.mvstore.tx.Transaction;
import org.h2.mvstore.tx.TransactionMap;
import org.h2.mvstore.tx.TransactionStore;
import org.h2.result.Row;
import org.h2.value.Value;
import org.h2.value.ValueNull;
import org.moultwright.store.file.DatabaseHeader;
import org.moultwright.store.file.PageFile;

/**
 * What a database file holds, read page by page without letting the database run it: opening a database
 * executes the statements stored in it, and those of a stranger may be a program. Reading changes nothing.
 *
 * @param statements the statements the database would execute on being opened
 * @param versions the versions its tables were ever brought to, empty if it is no store of ours
 */
record StoreContent(List<String> statements, List<Integer> versions) {
    static final String HISTORY_TABLE = "moultwright_history";

    private static final String SYSTEM_TABLE = "table.0";
    private static final int SYSTEM_ID_CELL = 0;
    private static final int SYSTEM_SQL_CELL = 3;
    private static final int HISTORY_VERSION_CELL = 1;

    StoreContent {
        statements = List.copyOf(statements);
        versions = List.copyOf(versions);
    }

    /**
     * Reads a file.
     *
     * @throws IllegalStateException if pages its head names are lost; the database would silently go back
     *     to older ones
     * @throws org.h2.mvstore.MVStoreException if it is damaged
     */
    static StoreContent read(Path file, DatabaseHeader header) {
        try (MVStore pages = PageFile.read(file, header)) {
            if (pages.getCurrentVersion() < header.pagesVersion()) {
                throw new IllegalStateException("pages of version " + header.pagesVersion()
                        + " are lost, the latest are " + pages.getCurrentVersion());
            }
            TransactionStore tables = new TransactionStore(pages, new ValueDataType());
            tables.init();
            return read(tables);
        }
    }

    private static StoreContent read(TransactionStore tables) {
        List<String> statements = new ArrayList<>();
        List<Integer> versions = new ArrayList<>();
        for (Value[] object : rows(tables, SYSTEM_TABLE)) {
            String sql = String.valueOf(object[SYSTEM_SQL_CELL].getString());
            statements.add(sql);
            if (sql.startsWith("CREATE CACHED TABLE \"PUBLIC\".\"" + HISTORY_TABLE + "\"")) {
                versions.addAll(versions(tables, object[SYSTEM_ID_CELL].getInt()));
            }
        }
        return new StoreContent(statements, versions);
    }

    private static List<Integer> versions(TransactionStore tables, int tableId) {
        return rows(tables, "table." + tableId).stream()
                .map(row -> row[HISTORY_VERSION_CELL])
                .filter(version -> !ValueNull.INSTANCE.equals(version))
                .map(version -> Integer.valueOf(version.getString()))
                .toList();
    }

    private static List<Value[]> rows(TransactionStore tables, String name) {
        List<Value[]> rows = new ArrayList<>();
        if (tables.hasMap(name)) {
            Transaction transaction = tables.begin();
            TransactionMap<Object, Object> map = transaction.openMap(name);
            map.values().forEach(row -> rows.add(((Row) row).getValueList()));
        }
        return rows;
    }
}
