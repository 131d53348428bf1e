package org.moultwright.store.sql;

import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/** How the store is read and written. */
public interface Transactions {

    /** Reads in one transaction that sees the store as it stands at its start. */
    <T> T read(Function<Handle, T> work);

    /** Writes in one transaction, all or nothing; what it wrote is on disk when this returns. */
    <T> T write(Function<Handle, T> work);
}
