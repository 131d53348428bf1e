package org.moultwright.store.file;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;

/** Says whether there is room to write. */
@FunctionalInterface
public interface DiskRoom {
    /** What the database may need to end what it began and close in good order. Our own figure. */
    long RESERVE_BYTES = 1 << 20;

    boolean isLeft();

    /** The room on the disk of a file that is there; a disk that does not know has some until writing fails. */
    static DiskRoom of(Path file) throws IOException {
        FileStore disk = Files.getFileStore(file);
        return () -> {
            try {
                return disk.getUsableSpace() >= RESERVE_BYTES || disk.getTotalSpace() <= 0;
            } catch (IOException unknown) {
                return true;
            }
        };
    }
}
