package org.moultwright.store.spool;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * The folder beside a store where loggers leave what they hear while another program has it open.
 *
 * @param path of the folder, which need not be there
 */
public record SpoolFolder(Path path) {
    private static final String ENDING = ".spool";

    public static SpoolFolder of(Path store) {
        return new SpoolFolder(store.resolveSibling(store.getFileName() + ENDING));
    }

    /** The name of a spool's file begins with when it was begun, so that they are taken in in order. */
    Path file(long begunMillis, UUID id) {
        return path.resolve(String.format(Locale.ROOT, "%016d-%s%s", begunMillis, id, ENDING));
    }

    List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(path)) {
            return files.filter(file -> file.getFileName().toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (NoSuchFileException nothingLeft) {
            return List.of();
        }
    }

    static UUID id(Path file) {
        String name = file.getFileName().toString();
        return UUID.fromString(name.substring(name.indexOf('-') + 1, name.length() - ENDING.length()));
    }
}
