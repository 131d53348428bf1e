package org.moultwright.store.file;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A file made beside the one it is to become, under a name that nothing else has, so that the other is there
 * whole or not at all. Closed without having become anything, it is removed.
 *
 * <p>What a killed program left of one is removed when the next is begun.
 */
public final class FileInTheMaking implements AutoCloseable {
    private static final String ENDING = ".unfinished";
    private static final String UUID_FORM = "\\.[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

    /** No file is in the making for so long; a younger one may be another program's. */
    private static final Duration LEFT_BEHIND = Duration.ofHours(1);

    private final Path target;
    private final Path path;

    private FileInTheMaking(Path target) {
        this.target = target;
        this.path = target.resolveSibling(target.getFileName() + "." + UUID.randomUUID() + ENDING);
    }

    /** Begins a file that is to become {@code target}; nothing is written yet. */
    public static FileInTheMaking of(Path target) throws IOException {
        removeLeftBehind(target);
        return new FileInTheMaking(target);
    }

    /** Where to write until it is whole. */
    public Path path() {
        return path;
    }

    /**
     * Gives the file its name, which nothing may have yet.
     *
     * @throws FileAlreadyExistsException if something has, however short a while ago
     */
    public void become() throws IOException {
        try {
            Files.createLink(target, path);
        } catch (FileAlreadyExistsException taken) {
            throw taken;
        } catch (IOException | UnsupportedOperationException noLinksHere) {
            Files.move(path, target);
        }
    }

    /** Takes the place of the file that has the name. */
    public void replace() throws IOException {
        Files.move(path, target, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void close() throws IOException {
        Files.deleteIfExists(path);
    }

    private static void removeLeftBehind(Path target) throws IOException {
        Pattern ours = Pattern.compile(
                Pattern.quote(String.valueOf(target.getFileName())) + UUID_FORM + Pattern.quote(ENDING));
        Instant before = Instant.now().minus(LEFT_BEHIND);
        for (Path file : inFolderOf(target)) {
            if (ours.matcher(String.valueOf(file.getFileName())).matches()
                    && Files.getLastModifiedTime(file).toInstant().isBefore(before)) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static List<Path> inFolderOf(Path target) throws IOException {
        try (Stream<Path> files = Files.list(target.toAbsolutePath().getParent())) {
            return files.toList();
        }
    }
}
