package org.moultwright.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes a file whole or not at all, in the place of an older one if there is one.
 *
 * <p>It is on the disk when the call returns. Whatever fails, a kill too, the older file is there as it was; whatever
 * fails but a kill, nothing is left beside it. The new one has the owner, group and permissions of the older, as far
 * as the system lets; where there was none, those the system gives any new file. Where the name is a symbolic link,
 * what it points to is written, and the link stays. A write-protected file is not replaced.
 */
public final class WholeFile {
    /** As many as Linux follows. */
    private static final int MOST_LINKS = 40;

    private WholeFile() {}

    /** Writes bytes into a folder that is there. */
    public static void write(Path file, byte[] bytes) throws IOException {
        Path place = place(file);
        requireReplaceable(place);
        try (FileInTheMaking fresh = FileInTheMaking.of(place)) {
            fresh.write(bytes);
            fresh.replace();
        }
    }

    /** Writes lines of text, in UTF-8 and with the line ends of this system, into a folder that is made if need be. */
    public static void write(Path file, List<String> lines) throws IOException {
        Files.createDirectories(file.toAbsolutePath().resolveSibling(""));
        String text = lines.stream().map(line -> line + System.lineSeparator()).collect(Collectors.joining());
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Where a file of this name is written: the name itself or, if it is a symbolic link, where that leads in the end,
     * even where no file is yet.
     *
     * @throws FileSystemLoopException if it leads nowhere
     */
    public static Path place(Path file) throws IOException {
        Path place = file.toAbsolutePath();
        for (int links = 0; Files.isSymbolicLink(place); links++) {
            if (links == MOST_LINKS) {
                throw new FileSystemLoopException(file.toString());
            }
            place = place.resolveSibling(Files.readSymbolicLink(place));
        }
        return place;
    }

    private static void requireReplaceable(Path place) throws IOException {
        if (Files.exists(place) && !Files.isRegularFile(place)) {
            throw new FileSystemException(place.toString(), null, "Not a file");
        }
        if (Files.exists(place) && !Files.isWritable(place)) {
            throw new AccessDeniedException(place.toString(), null, "Write-protected");
        }
    }
}
