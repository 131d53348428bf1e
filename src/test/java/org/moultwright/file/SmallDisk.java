package org.moultwright.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A disk of few megabytes that can be filled and given room again: a file system in memory. */
public final class SmallDisk implements AutoCloseable {
    private static final int LEFT_WHEN_FULL_BYTES = 20_000;

    private final Path folder;
    private final Path filling;

    private SmallDisk(Path folder) {
        this.folder = folder;
        this.filling = folder.resolve("filling");
    }

    /** A small disk in this folder; empty where the machine does not let this program make one. */
    public static Optional<SmallDisk> at(Path folder, int megabytes) {
        return run("mount", "-t", "tmpfs", "-o", "size=" + megabytes + "m", "tmpfs", folder.toString())
                ? Optional.of(new SmallDisk(folder))
                : Optional.empty();
    }

    public Path file(String name) {
        return folder.resolve(name);
    }

    public void fill() {
        fillBut(LEFT_WHEN_FULL_BYTES);
    }

    /** Leaves room for names, and not for one byte. */
    public void fillToTheBrim() {
        fillBut(0);
    }

    public void giveRoom() {
        try {
            Files.delete(filling);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        run("umount", folder.toString());
    }

    private void fillBut(int bytesLeft) {
        try {
            long free = Files.getFileStore(folder).getUsableSpace();
            Files.write(filling, new byte[Math.toIntExact(Math.max(0, free - bytesLeft))]);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean run(String... command) {
        try {
            return new ProcessBuilder(List.of(command))
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .onExit()
                            .join()
                            .exitValue()
                    == 0;
        } catch (IOException noSuchCommand) {
            return false;
        }
    }
}
