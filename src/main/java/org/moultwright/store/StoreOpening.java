package org.moultwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.h2.jdbcx.JdbcConnectionPool;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.store.file.ExactFilePath;
import org.moultwright.store.file.OwnerNote;

/** The way to an open store: look at the file without touching it, lock it, bring its tables up to date. */
final class StoreOpening {
    private static final String USER = "moultwright";
    private static final String SETTINGS = ";DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0";

    private StoreOpening() {}

    static H2Store open(Path file) {
        int version = Files.exists(file) ? StoreGuard.version(file) : 0;
        requireWritable(file);
        if (version > 0 && version < Migrations.LATEST) {
            Backup.beforeMigration(file, version);
        }
        JdbcConnectionPool connections = connections(file);
        OwnerNote owner = new OwnerNote(file);
        try {
            if (version < Migrations.LATEST) {
                Migrations.apply(connections);
            }
            H2Store store = new H2Store(owner, connections);
            owner.write();
            return store;
        } catch (RuntimeException e) {
            connections.dispose();
            throw Faults.isLocked(e) ? StoreGuard.inUse(file, e) : Faults.unchecked(e);
        }
    }

    static JdbcConnectionPool connections(Path file) {
        String name = ExactFilePath.databaseName(file).replace(";", "\\;");
        return JdbcConnectionPool.create("jdbc:h2:" + name + SETTINGS, USER, "");
    }

    private static void requireWritable(Path file) {
        try {
            Files.createDirectories(file.getParent());
        } catch (IOException e) {
            throw new StoreException(Reason.NOT_WRITABLE, "The folder '" + file.getParent() + "' cannot be made.", e);
        }
        Path place = Files.exists(file) ? file : file.getParent();
        if (!Files.isWritable(place) || !Files.isWritable(file.getParent())) {
            throw new StoreException(Reason.NOT_WRITABLE, "Nothing can be written to '" + place + "'.");
        }
    }
}
