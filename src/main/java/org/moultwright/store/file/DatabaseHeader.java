package org.moultwright.store.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The head of a database file, which stands in it twice, so that one survives a torn write.
 *
 * @param pagesVersion the last version of the pages the head knows of; those of a whole file are of that
 *     version or a later one
 * @param closed whether the file was closed in good order, so that there is no later version
 */
public record DatabaseHeader(long pagesVersion, boolean closed) {
    private static final int BLOCK_BYTES = 4096;
    private static final int HEXADECIMAL = 16;
    private static final Pattern HEADER = Pattern.compile("^H:2,[^\\n]*?(?:\\bversion:([0-9a-f]{1,15}),)?fletcher:");
    private static final String CLOSED = ",clean:1,";

    /** The head of a file, empty if it is no database's. */
    public static Optional<DatabaseHeader> read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return Stream.concat(header(in.readNBytes(BLOCK_BYTES)), header(in.readNBytes(BLOCK_BYTES)))
                    .max(Comparator.comparingLong(DatabaseHeader::pagesVersion));
        }
    }

    /** A database never closed yet may not have noted any version. */
    private static Stream<DatabaseHeader> header(byte[] block) {
        Matcher header = HEADER.matcher(new String(block, StandardCharsets.ISO_8859_1));
        if (!header.find()) {
            return Stream.empty();
        }
        String version = header.group(1);
        return Stream.of(new DatabaseHeader(
                version == null ? 0 : Long.parseLong(version, HEXADECIMAL),
                header.group().contains(CLOSED)));
    }
}
