package org.moultwright.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipInputStream;
import org.jdbi.v3.core.Handle;
import org.moultwright.file.FileInTheMaking;
import org.moultwright.language.Texts;
import org.moultwright.store.StoreException.Reason;

/**
 * Copies of stores. A backup is itself a store in one file: to look into it, open it; to go back to it,
 * copy it. No file that is there already is ever written over.
 */
final class Backup {
    /** Pictures stay where they are while tables change. */
    private static final Beside NOTHING_BESIDE = () -> {};

    private Backup() {}

    /**
     * Copies an open store while others go on using it, and makes sure the copy can be opened.
     *
     * @param photos copies what belongs to it beside it, before there is a copy it could be missed at
     */
    static void of(H2Transactions store, Path target, Beside photos) {
        write(target, copy -> {
            try (FileInTheMaking zip = FileInTheMaking.of(target)) {
                store.alone(handle -> zipped(handle, zip.path()));
                unzip(zip.path(), copy);
                photos.copy();
            }
        });
    }

    /** Copies a closed store or backup, and makes sure the copy can be opened. */
    static void ofClosed(Path source, Path target, Beside photos) {
        write(target, copy -> {
            Files.copy(source, copy);
            photos.copy();
        });
    }

    /** Copies a closed store beside itself before its tables are changed, unless the same copy is there already. */
    static Path beforeMigration(Path file, int version) throws IOException {
        String name = file.getFileName() + ".version-" + version + ".backup";
        Path target = file.resolveSibling(name);
        for (int i = 2; Files.exists(target); i++) {
            if (Files.mismatch(file, target) < 0) {
                return target;
            }
            target = file.resolveSibling(name + "-" + i);
        }
        ofClosed(file, target, NOTHING_BESIDE);
        return target;
    }

    private static void write(Path target, Writing writing) {
        try (FileInTheMaking copy = FileInTheMaking.of(target)) {
            if (Files.exists(target)) {
                throw new FileAlreadyExistsException(target.toString());
            }
            writing.to(copy.path());
            StoreGuard.version(copy.path());
            copy.become();
        } catch (FileAlreadyExistsException e) {
            throw new StoreException(Reason.ALREADY_THERE, Texts.say("There is already a file '{0}'.", target), e);
        } catch (IOException e) {
            throw Faults.ofWriting(target, e);
        }
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

    /** Copies what lies beside a store. */
    @FunctionalInterface
    interface Beside {
        void copy() throws IOException;
    }

    /** Writes a copy to a file that is not there yet. */
    private interface Writing {
        void to(Path copy) throws IOException;
    }
}
