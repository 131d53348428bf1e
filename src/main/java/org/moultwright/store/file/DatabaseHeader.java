package org.moultwright.store.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;

/** The head of a database file, which stands in it twice, so that one survives a torn write. */
public final class DatabaseHeader {
    private static final int BLOCK_BYTES = 4096;
    private static final int HEXADECIMAL = 16;
    private static final Pattern HEADER = Pattern.compile("^H:2,[^\\n]*?(?:\\bversion:([0-9a-f]{1,15}),)?fletcher:");

    private DatabaseHeader() {}

    /**
     * The last version of the pages the head knows of; the pages of a whole file are of that version or a
     * later one.
     *
     * @return empty if this is no database file
     */
    public static OptionalLong pagesVersion(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return LongStream.concat(version(in.readNBytes(BLOCK_BYTES)), version(in.readNBytes(BLOCK_BYTES)))
                    .max();
        }
    }

    /** A database never closed yet may not have noted any version. */
    private static LongStream version(byte[] block) {
        Matcher header = HEADER.matcher(new String(block, StandardCharsets.ISO_8859_1));
        if (!header.find()) {
            return LongStream.empty();
        }
        String version = header.group(1);
        return LongStream.of(version == null ? 0 : Long.parseLong(version, HEXADECIMAL));
    }
}
