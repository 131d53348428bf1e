package org.moultwright.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import java.util.function.Predicate;
import org.flywaydb.core.api.FlywayException;
import org.h2.api.ErrorCode;
import org.h2.mvstore.DataUtils;
import org.h2.mvstore.MVStoreException;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;
import org.moultwright.store.StoreException.Reason;

/** Turns what the database and the disk throw into what the store promises to throw. */
final class Faults {
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
                        Reason.NOT_WRITABLE, "'" + file + "' cannot be written: " + cause.getMessage() + ".", cause);
    }

    static boolean isDiskFull(Throwable thrown) {
        return isCausedBy(thrown, Faults::saysDiskFull);
    }

    static boolean isLocked(Throwable thrown) {
        return isCausedBy(
                thrown,
                cause -> sqlCode(cause) == ErrorCode.DATABASE_ALREADY_OPEN_1
                        || pageCode(cause) == DataUtils.ERROR_FILE_LOCKED);
    }

    private static StoreException fault(@Nullable Throwable thrown) {
        if (thrown != null && isDiskFull(thrown)) {
            return new StoreException(Reason.DISK_FULL, "The disk is full; the last entry was not saved.", thrown);
        }
        String said = Optional.ofNullable(thrown).map(Throwable::getMessage).orElse("no reason given");
        return new StoreException(Reason.FAILED, "The store could not do its work: " + said + ".", thrown);
    }

    private static boolean saysDiskFull(Throwable cause) {
        String said = String.valueOf(cause.getMessage());
        return cause instanceof IOException
                && (said.contains("No space left") || said.contains("not enough space") || said.contains("quota"));
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
