package org.moultwright.store;

import java.nio.file.Path;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;

/**
 * The steps that bring a store's tables from one version to the next.
 *
 * @param latest the version they lead to; the number of the last file among them
 * @param places where they stand, on the class path
 */
record Migrations(int latest, List<String> places) {
    /** Those of this program: what it reads and writes is of their latest version. */
    static final Migrations OURS = new Migrations(7, List.of("classpath:org/moultwright/store/migration"));

    Migrations {
        places = List.copyOf(places);
    }

    /**
     * Takes a database file nobody has open to the latest version, or makes it. The database cannot take a
     * step back, so a file that matters is never given here, only a copy of it.
     */
    void apply(Path file) {
        JdbcConnectionPool connections = StoreOpening.connections(file);
        try {
            Flyway.configure()
                    .dataSource(connections)
                    .locations(places.toArray(String[]::new))
                    .table(StoreContent.HISTORY_TABLE)
                    .load()
                    .migrate();
        } finally {
            connections.dispose();
        }
    }
}
