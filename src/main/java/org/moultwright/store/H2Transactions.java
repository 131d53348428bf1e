package org.moultwright.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import org.moultwright.store.file.DiskRoom;
import org.moultwright.store.file.PageFile;
import org.moultwright.store.sql.Transactions;

/**
 * Transactions of one open database: all writing by one connection, one after another, forced to disk.
 *
 * <p>A full disk or a fault of the disk makes the database stop for good, long before the trouble is over. So
 * nothing is written while the disk has hardly any room, and a database that stopped is opened again for
 * whoever asks next.
 */
final class H2Transactions implements Transactions {
    private final Lanes lanes = new Lanes();
    private final Path file;
    private final DiskRoom room;

    /** Held for reading while the database works, for writing while it is opened again. */
    private final ReentrantReadWriteLock working = new ReentrantReadWriteLock();

    private volatile Database database;
    private volatile boolean stopped;

    H2Transactions(Path file, DiskRoom room) {
        this.file = file;
        this.room = room;
        this.database = lanes.write(() -> Database.open(file));
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        if (stopped) {
            lanes.write(this::openAgainIfStopped);
        }
        return lanes.read(
                () -> using(open -> open.jdbi().inTransaction(TransactionIsolationLevel.REPEATABLE_READ, work::apply)));
    }

    @Override
    public <T> T write(Function<Handle, T> work) {
        return alone(handle -> {
            T result = handle.inTransaction(work::apply);
            handle.execute("checkpoint sync");
            return result;
        });
    }

    /** Does something with the writing connection, outside any transaction. */
    <T> T alone(Function<Handle, T> work) {
        return lanes.write(() -> {
            openAgainIfStopped();
            if (!room.isLeft()) {
                throw Faults.diskFull(null);
            }
            return using(open -> work.apply(open.writer()));
        });
    }

    /**
     * Lets what was begun end, then lets go of the file.
     *
     * @return false if this was done before
     */
    boolean close() {
        boolean closedNow = lanes.close();
        if (closedNow) {
            database.close();
        }
        return closedNow;
    }

    private <T> T using(Function<Database, T> work) {
        working.readLock().lock();
        try {
            return work.apply(database);
        } catch (RuntimeException e) {
            if (Faults.stopsDatabase(e)) {
                stopped = true;
                throw room.isLeft() ? e : Faults.diskFull(e);
            }
            throw e;
        } finally {
            working.readLock().unlock();
        }
    }

    private boolean openAgainIfStopped() throws IOException {
        working.writeLock().lock();
        try {
            if (stopped) {
                database.close();
                PageFile.settle(file, StoreGuard.header(file));
                database = Database.open(file);
                stopped = false;
            }
            return stopped;
        } finally {
            working.writeLock().unlock();
        }
    }
}
