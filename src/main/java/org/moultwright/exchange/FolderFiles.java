package org.moultwright.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The files of a brood folder, in a directory or in a zip file of one.
 *
 * <p>Only plain files directly inside count: a link that leads elsewhere, or a path that climbs out of a zip,
 * is never followed.
 */
final class FolderFiles implements AutoCloseable {
    private final Path root;
    private final Optional<FileSystem> zip;

    private FolderFiles(Path root, Optional<FileSystem> zip) {
        this.root = root;
        this.zip = zip;
    }

    /**
     * Opens a folder.
     *
     * @throws IOException if it is neither a directory nor a zip file, or cannot be read
     */
    static FolderFiles open(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return new FolderFiles(folder, Optional.empty());
        }
        if (!Files.isRegularFile(folder) || !looksLikeZip(folder)) {
            throw new IOException("'" + folder + "' is neither a folder nor a zip file of one");
        }
        FileSystem zip = FileSystems.newFileSystem(folder);
        return new FolderFiles(broodRoot(zip.getPath("/")), Optional.of(zip));
    }

    /** A file's content, empty where there is no such file. */
    Optional<InputStream> open(String name) throws IOException {
        Path file = root.resolve(name);
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                ? Optional.of(Files.newInputStream(file))
                : Optional.empty();
    }

    /** Names of files inside, in order. */
    List<String> names() throws IOException {
        try (Stream<Path> inside = Files.list(root)) {
            return inside.map(path -> String.valueOf(path.getFileName()))
                    .sorted()
                    .toList();
        }
    }

    @Override
    public void close() throws IOException {
        if (zip.isPresent()) {
            zip.get().close();
        }
    }

    /** Many programs zip the directory itself: one directory at the top is then the folder. */
    private static Path broodRoot(Path top) throws IOException {
        if (Files.exists(top.resolve(BroodJson.FILE))) {
            return top;
        }
        try (Stream<Path> inside = Files.list(top)) {
            List<Path> all = inside.toList();
            return all.size() == 1 && Files.isDirectory(all.get(0)) ? all.get(0) : top;
        }
    }

    private static boolean looksLikeZip(Path file) throws IOException {
        try (InputStream content = Files.newInputStream(file)) {
            byte[] start = content.readNBytes(2);
            return start.length == 2 && start[0] == 'P' && start[1] == 'K';
        }
    }
}
