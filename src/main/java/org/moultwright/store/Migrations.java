package org.moultwright.store;

import javax.sql.DataSource;
import org.flywaydb.core.Flyway;

/** The steps that bring a store's tables from one version to the next. */
final class Migrations {
    /** The version this program reads and writes; the number of the last file among the migrations. */
    static final int LATEST = 2;

    private static final String PLACE = "classpath:org/moultwright/store/migration";

    private Migrations() {}

    /** Takes a store to the latest version, each step whole or not at all. */
    static void apply(DataSource store) {
        Flyway.configure()
                .dataSource(store)
                .locations(PLACE)
                .table(StoreContent.HISTORY_TABLE)
                .load()
                .migrate();
    }
}
