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
    static H2Store open(Path named, Migrations migrations) {
        Database.loadAside();
        Path file = writable(named.toAbsolutePath().normalize());
        try {
            return open(file, migrations, false);
        } catch (StoreException e) {
            if (e.reason() == Reason.IN_USE && mayBeWaitedFor(file, 0)) {
                return openWhenLetGo(file, migrations);
            }
            throw e;
        }
    }

    static H2Store openToLog(Path named, Migrations migrations) {
        return open(writable(named.toAbsolutePath().normalize()), migrations, true);
    }

    private static H2Store openWhenLetGo(Path file, Migrations migrations) {
        long beganAtNanos = System.nanoTime();
        try (HandOverWish wish = HandOverWish.of(file)) {
            while (true) {
                wish.await(BETWEEN_ATTEMPTS);
                try {
                    return open(file, migrations, false);
                } catch (StoreException e) {
                    if (e.reason() != Reason.IN_USE || !mayBeWaitedFor(file, System.nanoTime() - beganAtNanos)) {
                        throw e;
                    }
                }
            }
        } catch (IOException e) {
            throw Faults.ofWriting(file, e);
        }
    }

    /** For a logger, which lets go, and for whoever is just opening or closing, so that no running program is noted. */
    private static boolean mayBeWaitedFor(Path file, long waitedNanos) {
        OwnerNote owner = new OwnerNote(file);
        Duration patience =
                owner.isLogging() ? FOR_A_LOGGER : owner.isOfARunningProgram() ? Duration.ZERO : FOR_ONE_THAT_OPENS;
        return waitedNanos < patience.toNanos() && !Thread.currentThread().isInterrupted();
    }

    private static H2Store open(Path file, Migrations migrations, boolean isLogging) {
        if (!OPEN_HERE.add(file)) {
            throw StoreGuard.inUse(file);
        }
        try {
            return openAlone(file, migrations, isLogging);
        } catch (RuntimeException e) {
            OPEN_HERE.remove(file);
            throw Faults.isLocked(e) ? StoreGuard.inUse(file) : Faults.unchecked(e);
        }
    }

    /** Says that a store opened here is closed. */
    static void closed(Path file) {
        OPEN_HERE.remove(file);
    }

    private static H2Store openAlone(Path file, Migrations migrations, boolean isLogging) {
        StoreMaking making = new StoreMaking(migrations);
        if (!Files.exists(file)) {
            making.make(file);
        }
        int version = admitted(file, migrations);
        if (version < migrations.latest()) {
            making.bringUpToDate(file, version);
        }
        try {
            return new H2Store(file, isLogging);
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
    private static Path writable(Path file) {
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
