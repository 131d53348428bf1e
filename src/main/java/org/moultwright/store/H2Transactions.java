package org.moultwright.store;

import java.util.function.Function;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import org.moultwright.store.sql.Transactions;

/** Transactions of one open database: all writing by one connection, one after another, forced to disk. */
final class H2Transactions implements Transactions {
    private final Lanes lanes = new Lanes();
    private final Jdbi jdbi;
    private final Handle writer;

    H2Transactions(DataSource connections) {
        this.jdbi = Jdbi.create(connections);
        this.writer = lanes.write(jdbi::open);
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        return lanes.read(() -> jdbi.inTransaction(TransactionIsolationLevel.REPEATABLE_READ, work::apply));
    }

    @Override
    public <T> T write(Function<Handle, T> work) {
        return lanes.write(() -> {
            T result = writer.inTransaction(work::apply);
            writer.execute("checkpoint sync");
            return result;
        });
    }

    /** Does something with the writing connection, outside any transaction. */
    <T> T alone(Function<Handle, T> work) {
        return lanes.write(() -> work.apply(writer));
    }

    /**
     * Lets what was begun end, then lets go of the writing connection.
     *
     * @return false if this was done before
     */
    boolean close() {
        boolean closedNow = lanes.close();
        if (closedNow) {
            writer.close();
        }
        return closedNow;
    }
}
