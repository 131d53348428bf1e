package org.moultwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipInputStream;
import org.jdbi.v3.core.Handle;
import org.moultwright.store.StoreException.Reason;

/**
 * Copies of stores. A backup is itself a store in one file: to look into it, open it; to go back to it,
 * copy it. No file that is there already is ever written over.
 */
final class Backup {
    private Backup() {}

    /** Copies an open store while others go on using it, and makes sure the copy can be opened. */
    static void of(H2Transactions store, Path target) {
        requireFree(target);
        Path zip = beside(target, ".zip");
        Path copy = beside(target, ".copy");
        try {
            store.alone(handle -> zipped(handle, zip));
            unzip(zip, copy);
            finish(copy, target);
        } catch (IOException e) {
            throw failed(target, e);
        } finally {
            discard(zip);
            discard(copy);
        }
    }

    /** Copies a closed store or backup, and makes sure the copy can be opened. */
    static void ofClosed(Path source, Path target) {
        requireFree(target);
        Path copy = beside(target, ".copy");
        try {
            Files.copy(source, copy);
            finish(copy, target);
        } catch (IOException e) {
            throw failed(target, e);
        } finally {
            discard(copy);
        }
    }

    /** Copies a closed store beside itself before its tables are changed. */
    static void beforeMigration(Path file, int version) {
        String name = file.getFileName() + ".version-" + version + ".backup";
        Path target = file.resolveSibling(name);
        for (int i = 2; Files.exists(target); i++) {
            target = file.resolveSibling(name + "-" + i);
        }
        ofClosed(file, target);
    }

    private static void finish(Path copy, Path target) throws IOException {
        StoreGuard.version(copy);
        Files.move(copy, target);
    }

    private static boolean zipped(Handle handle, Path zip) {
        handle.execute("backup to ?", zip.toString());
        return true;
    }

    private static void unzip(Path zip, Path copy) throws IOException {
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
            if (in.getNextEntry() == null) {
                throw new IOException("the backup is empty");
            }
            Files.copy(in, copy);
        }
    }

    private static void requireFree(Path target) {
        if (Files.exists(target)) {
            throw new StoreException(Reason.ALREADY_THERE, "There is already a file '" + target + "'.");
        }
    }

    private static Path beside(Path target, String ending) {
        return target.resolveSibling(target.getFileName() + ending);
    }

    private static StoreException failed(Path target, IOException cause) {
        return new StoreException(
                Reason.NOT_WRITABLE, "'" + target + "' cannot be written: " + cause.getMessage() + ".", cause);
    }

    private static void discard(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw failed(file, e);
        }
    }
}
