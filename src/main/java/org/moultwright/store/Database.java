package org.moultwright.store;

import java.nio.file.Path;
import java.sql.SQLException;
import org.h2.jdbcx.JdbcConnectionPool;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.SqlStatements;
import org.jdbi.v3.core.statement.TemplateEngine;
import org.moultwright.store.sql.NamedParameters;

/** A database file that is open: connections that read, and the one that writes. */
final class Database {
    private final JdbcConnectionPool connections;
    private final Jdbi jdbi;
    private final Handle writer;

    private Database(JdbcConnectionPool connections) {
        this.connections = connections;
        this.jdbi = Jdbi.create(connections);
        jdbi.getConfig(SqlStatements.class)
                .setTemplateEngine(TemplateEngine.NOP)
                .setSqlParser(new NamedParameters());
        this.writer = jdbi.open();
    }

    /**
     * Has the library loaded aside that reads and writes with it, while a file is still looked at; no file is touched. It
     * is a third of the time opening takes.
     */
    static void loadAside() {
        Thread loading = new Thread(
                () -> Jdbi.create(() -> {
                    throw new SQLException("nothing is connected to");
                }),
                "store library");
        loading.setDaemon(true);
        loading.start();
    }

    static Database open(Path file) {
        JdbcConnectionPool connections = StoreOpening.connections(file);
        try {
            return new Database(connections);
        } catch (RuntimeException e) {
            connections.dispose();
            throw e;
        }
    }

    Jdbi jdbi() {
        return jdbi;
    }

    Handle writer() {
        return writer;
    }

    /** Lets go of the file. One that has stopped working cannot say goodbye properly, and need not. */
    void close() {
        try {
            writer.close();
        } catch (JdbiException alreadyStopped) {
            // What it could still say, it said when it stopped.
        } finally {
            connections.dispose();
        }
    }
}
