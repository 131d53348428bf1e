package org.moultwright.exchange;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.ProviderNotFoundException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.language.Texts;

/**
 * The files of a brood folder, in a directory or in a zip file of one.
 *
 * <p>Only plain files directly inside count: a link is refused, since it may lead anywhere, and nothing of a
 * zip is ever written to disk. A file larger than any brood needs is refused before it fills the memory.
 */
final class FolderFiles implements AutoCloseable {
    /** About a hundred million readings; everything else is small. */
    private static final long MOST_BYTES_OF_READINGS = 4L << 30;

    private static final long MOST_BYTES = 64L << 20;

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
            throw new IOException(Texts.say("'{0}' is neither a folder nor a zip file of one", folder));
        }
        FileSystem zip = openZip(folder);
        return new FolderFiles(broodRoot(zip.getPath("/")), Optional.of(zip));
    }

    /** A file's content, empty where there is no such file. */
    Optional<InputStream> open(String name) throws IOException {
        Path file = root.resolve(name);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException(Texts.say("it is a link or a folder and not followed"));
        }
        long most = name.equals(ReadingRows.FILE) ? MOST_BYTES_OF_READINGS : MOST_BYTES;
        return Optional.of(new Bounded(Files.newInputStream(file), most));
    }

    /** Names of files inside, in order. */
    List<String> names() throws IOException {
        try (Stream<Path> inside = Files.list(root)) {
            return inside.map(path -> String.valueOf(path.getFileName()))
                    .map(name -> name.replace("/", ""))
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

    private static FileSystem openZip(Path file) throws IOException {
        try {
            return FileSystems.newFileSystem(file);
        } catch (ProviderNotFoundException notByName) {
            throw new IOException(Texts.say("'{0}' is not a zip file", file), notByName);
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

    /** Stops where a small zip unfolds into more than a brood can be. */
    private static final class Bounded extends FilterInputStream {
        private final long most;
        private long left;

        Bounded(InputStream content, long most) {
            super(content);
            this.most = most;
            this.left = most;
        }

        @Override
        public int read() throws IOException {
            int next = super.read();
            count(next < 0 ? 0 : 1);
            return next;
        }

        @Override
        public int read(byte[] buffer, int offset, int length) throws IOException {
            int read = super.read(buffer, offset, length);
            count(Math.max(0, read));
            return read;
        }

        private void count(int read) throws IOException {
            left -= read;
            if (left < 0) {
                throw new IOException(Texts.say("it is larger than {0} MiB", most >> 20));
            }
        }
    }
}
