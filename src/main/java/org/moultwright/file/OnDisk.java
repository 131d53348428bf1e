package org.moultwright.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;

/** Waits until what was written is on the disk, so that it is there after a power cut too. */
public final class OnDisk {
    private OnDisk() {}

    /** Forces a folder with all that is in it. */
    public static void forceAll(Path folder) throws IOException {
        for (Path path : inside(folder)) {
            if (Files.isDirectory(path)) {
                forceNames(path);
            } else {
                force(path);
            }
        }
    }

    /** Forces what is in a file, whoever wrote it. */
    static void force(Path file) throws IOException {
        try (FileChannel content = FileChannel.open(file, StandardOpenOption.WRITE)) {
            content.force(true);
        }
    }

    /** A file's new name lives in its folder, which some systems force to the disk only when asked, and others cannot. */
    public static void forceNames(Path folder) {
        try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
            names.force(true);
        } catch (IOException notHere) {
            // This system opens no folders; it keeps names by itself.
        }
    }

    private static List<Path> inside(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.toList();
        }
    }
}
