package org.moultwright.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A file made beside the one it is to become, under a name that nothing else has, so that the other is there
 * whole or not at all. Closed without having become anything, it is removed.
 *
 * <p>It is forced to the disk before it gets its name, and so is the name after. What a killed program left of one
 * is removed when the next is begun; what cannot be removed hinders nothing.
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

    /** Writes all of it. Where it is to replace a file, nobody else may read it meanwhile. */
    public void write(byte[] bytes) throws IOException {
        try (FileChannel out = FileChannel.open(
                path, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), Rights.inTheMakingOf(target))) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                out.write(rest);
            }
        }
    }

    /**
     * Gives the file its name, which nothing may have yet.
     *
     * @throws FileAlreadyExistsException if something has, however short a while ago
     */
    public void become() throws IOException {
        OnDisk.force(path);
        try {
            Files.createLink(target, path);
        } catch (FileAlreadyExistsException taken) {
            throw taken;
        } catch (IOException | UnsupportedOperationException noLinksHere) {
            Files.move(path, target);
        }
        OnDisk.forceNames(folderOf(target));
    }

    /** Takes the place, and the rights, of the file that has the name, if there is one. */
    public void replace() throws IOException {
        OnDisk.force(path);
        Rights.of(target).ifPresent(rights -> rights.layOn(path));
        try {
            Files.move(path, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException | FileAlreadyExistsException notInOneStepHere) {
            Files.move(path, target, StandardCopyOption.REPLACE_EXISTING);
        }
        OnDisk.forceNames(folderOf(target));
    }

    @Override
    public void close() throws IOException {
        Files.deleteIfExists(path);
    }

    private static void removeLeftBehind(Path target) throws IOException {
        Pattern ours = Pattern.compile(
                Pattern.quote(String.valueOf(target.getFileName())) + UUID_FORM + Pattern.quote(ENDING));
        Instant before = Instant.now().minus(LEFT_BEHIND);
        for (Path file : inside(folderOf(target))) {
            if (ours.matcher(String.valueOf(file.getFileName())).matches()) {
                removeIfOlder(file, before);
            }
        }
    }

    private static void removeIfOlder(Path file, Instant before) {
        try {
            if (Files.getLastModifiedTime(file).toInstant().isBefore(before)) {
                Files.deleteIfExists(file);
            }
        } catch (IOException goneOrNotOurs) {
            // Whoever made it has just removed it, or else it stays.
        }
    }

    private static List<Path> inside(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        } catch (AccessDeniedException onlyToBeWritten) {
            return List.of();
        } catch (UncheckedIOException fault) {
            throw fault.getCause();
        }
    }

    private static Path folderOf(Path target) {
        return target.toAbsolutePath().resolveSibling("");
    }
}
