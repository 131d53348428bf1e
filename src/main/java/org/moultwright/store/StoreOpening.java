package org.moultwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.h2.jdbcx.JdbcConnectionPool;
import org.moultwright.language.Texts;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.store.file.ExactFilePath;
import org.moultwright.store.file.HandOverWish;
import org.moultwright.store.file.OwnerNote;
import org.moultwright.store.file.PageFile;

/** The way to an open store: look at the file without touching it, lock it, bring its tables up to date. */
final class StoreOpening {
    private static final String USER = "moultwright";

    /** A logger lets go once it has written what it is writing. */
    private static final Duration FOR_A_LOGGER = Duration.ofSeconds(15);

    private static final Duration FOR_ONE_THAT_OPENS = Duration.ofSeconds(3);

    private static final Duration BETWEEN_ATTEMPTS = Duration.ofMillis(50);

    /** By itself the cache grows with the memory of the machine, to a gigabyte and more on a usual one. */
    private static final int CACHE_KILOBYTES = 16 * 1024;

    /** A room is read by some thirty statements for each brood; by itself the database keeps the last eight understood. */
    private static final int STATEMENTS_KEPT = 64;

    /**
     * Without a write delay all writing is done by the thread that commits. With one, another thread may
     * have begun to write what was committed, and a checkpoint does not wait for it.
     */
    private static final String SETTINGS = ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0;QUERY_CACHE_SIZE="
            + STATEMENTS_KEPT + ";CACHE_SIZE=" + CACHE_KILOBYTES;

    /**
     * The stores open in this program. The lock on the file is the whole program's: merely reading the file
     * a second time would lose it, so that a second opening must end before.
     */
    private static final Set<Path> OPEN_HERE = ConcurrentHashMap.newKeySet();

    private StoreOpening() {}

    /** Opens a store; a logger that has it is asked to let go of it, and waited for. */
    static void open(H2Store store, Migrations migrations) {
        try {
            open(store, migrations, false);
        } catch (StoreException e) {
            if (e.reason() != Reason.IN_USE || !mayBeWaitedFor(store.file(), 0)) {
                throw e;
            }
            openWhenLetGo(store, migrations);
        }
    }

    static void openToLog(H2Store store, Migrations migrations) {
        open(store, migrations, true);
    }

    private static void openWhenLetGo(H2Store store, Migrations migrations) {
        long beganAtNanos = System.nanoTime();
        try (HandOverWish wish = HandOverWish.of(store.file())) {
            while (true) {
                wish.await(BETWEEN_ATTEMPTS);
                try {
                    open(store, migrations, false);
                    return;
                } catch (StoreException e) {
                    if (e.reason() != Reason.IN_USE
                            || !mayBeWaitedFor(store.file(), System.nanoTime() - beganAtNanos)) {
                        throw e;
                    }
                }
            }
        } catch (IOException e) {
            throw Faults.ofWriting(store.file(), e);
        }
    }

    /** For a logger, which lets go, and for whoever is just opening or closing, so that no running program is noted. */
    private static boolean mayBeWaitedFor(Path file, long waitedNanos) {
        OwnerNote owner = new OwnerNote(file);
        Duration patience =
                owner.isLogging() ? FOR_A_LOGGER : owner.isOfARunningProgram() ? Duration.ZERO : FOR_ONE_THAT_OPENS;
        return waitedNanos < patience.toNanos() && !Thread.currentThread().isInterrupted();
    }

    private static void open(H2Store store, Migrations migrations, boolean isLogging) {
        Path file = store.file();
        if (!OPEN_HERE.add(file)) {
            throw StoreGuard.inUse(file);
        }
        try {
            openAlone(store, migrations, isLogging);
        } catch (RuntimeException e) {
            OPEN_HERE.remove(file);
            throw Faults.isLocked(e) ? StoreGuard.inUse(file) : Faults.unchecked(e);
        }
    }

    /** Says that a store opened here is closed. */
    static void closed(Path file) {
        OPEN_HERE.remove(file);
    }

    /** How a file was left that neither this program nor another has open. */
    static Optional<StoreStamp> atRest(Path named) {
        try {
            Path file = named.toRealPath();
            return OPEN_HERE.contains(file) || StoreGuard.isLocked(file) ? Optional.empty() : StoreStamp.of(file);
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static void openAlone(H2Store store, Migrations migrations, boolean isLogging) {
        Path file = store.file();
        StoreMaking making = new StoreMaking(migrations);
        if (!Files.exists(file)) {
            making.make(file);
        }
        int version = admitted(file, migrations);
        if (version < migrations.latest()) {
            making.bringUpToDate(file, version);
        }
        try {
            store.begin(isLogging);
        } catch (IOException e) {
            throw Faults.ofWriting(file, e);
        }
    }

    /** The version of a store that may be opened, its latest pages found even after a kill. */
    private static int admitted(Path file, Migrations migrations) {
        int version = StoreGuard.version(file, migrations);
        PageFile.settle(file, StoreGuard.header(file));
        return version;
    }

    static JdbcConnectionPool connections(Path file) {
        return JdbcConnectionPool.create("jdbc:h2:" + ExactFilePath.databaseName(file) + SETTINGS, USER, "");
    }

    /** The real name of a file that can be written or made; its folder is made if need be. */
    static Path writable(Path named) {
        Path file = named.toAbsolutePath().normalize();
        Path folder = Optional.ofNullable(file.getParent()).orElse(file);
        try {
            Files.createDirectories(folder);
            Path real =
                    Files.exists(file) ? file.toRealPath() : folder.toRealPath().resolve(file.getFileName());
            if (Files.isWritable(real.getParent()) && (!Files.exists(real) || Files.isWritable(real))) {
                return real;
            }
        } catch (IOException e) {
            throw new StoreException(
                    Reason.NOT_WRITABLE, Texts.say("The folder '{0}' cannot be made or read.", folder), e);
        }
        throw new StoreException(Reason.NOT_WRITABLE, Texts.say("Nothing can be written to '{0}'.", file));
    }
}
