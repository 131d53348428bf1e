package org.moultwright.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.flywaydb.core.api.FlywayException;
import org.h2.api.ErrorCode;
import org.h2.mvstore.DataUtils;
import org.h2.mvstore.MVStoreException;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;
import org.moultwright.language.Texts;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.store.file.FullDisk;

/** Turns what the database and the disk throw into what the store promises to throw. */
final class Faults {
    /** What a database says that has stopped, or stops by what it says. */
    private static final Set<Integer> STOPPED = Set.of(
            ErrorCode.DATABASE_IS_CLOSED,
            ErrorCode.OBJECT_CLOSED,
            ErrorCode.CONNECTION_BROKEN_1,
            ErrorCode.IO_EXCEPTION_1,
            ErrorCode.IO_EXCEPTION_2,
            ErrorCode.FILE_CORRUPTED_1);

    private Faults() {}

    /** Faults of the database become a {@link StoreException}; whatever else was thrown stays as it is. */
    static RuntimeException unchecked(@Nullable Throwable thrown) {
        if (thrown instanceof JdbiException
                || thrown instanceof SQLException
                || thrown instanceof MVStoreException
                || thrown instanceof FlywayException) {
            return fault(thrown);
        }
        if (thrown instanceof Error error) {
            throw error;
        }
        return thrown instanceof RuntimeException unchecked ? unchecked : fault(thrown);
    }

    /** A fault of writing a file. */
    static StoreException ofWriting(Path file, IOException cause) {
        return isDiskFull(cause)
                ? fault(cause)
                : new StoreException(
                        Reason.NOT_WRITABLE,
                        Texts.say("'{0}' cannot be written: {1}.", file, cause.getMessage()),
                        cause);
    }

    static boolean isDiskFull(Throwable thrown) {
        return isCausedBy(thrown, FullDisk::isSaidBy);
    }

    static boolean isLocked(Throwable thrown) {
        return isCausedBy(
                thrown,
                cause -> sqlCode(cause) == ErrorCode.DATABASE_ALREADY_OPEN_1
                        || pageCode(cause) == DataUtils.ERROR_FILE_LOCKED);
    }

    static StoreException diskFull(@Nullable Throwable thrown) {
        return new StoreException(
                Reason.DISK_FULL, Texts.say("The disk is full; the last entry was not saved."), thrown);
    }

    /** Whether the database that threw this does nothing more. */
    static boolean stopsDatabase(Throwable thrown) {
        return thrown instanceof JdbiException
                && isCausedBy(
                        thrown,
                        cause -> cause instanceof IOException
                                || cause instanceof MVStoreException
                                || STOPPED.contains(sqlCode(cause)));
    }

    private static StoreException fault(@Nullable Throwable thrown) {
        if (thrown != null && isDiskFull(thrown)) {
            return diskFull(thrown);
        }
        String said = Optional.ofNullable(thrown)
                .map(Faults::rootMessage)
                .flatMap(words -> words.lines().findFirst())
                .orElse("no reason given");
        return new StoreException(Reason.FAILED, Texts.say("The store could not do its work: {0}.", said), thrown);
    }

    /** What the one who noticed first said; those above repeat it with all they were doing. */
    private static @Nullable String rootMessage(Throwable thrown) {
        Throwable root = thrown;
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            root = cause;
        }
        return root.getMessage();
    }

    private static int sqlCode(Throwable cause) {
        return cause instanceof SQLException fault ? fault.getErrorCode() : 0;
    }

    private static int pageCode(Throwable cause) {
        return cause instanceof MVStoreException fault ? fault.getErrorCode() : 0;
    }

    private static boolean isCausedBy(@Nullable Throwable thrown, Predicate<Throwable> condition) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (condition.test(cause)) {
                return true;
            }
        }
        return false;
    }
}
