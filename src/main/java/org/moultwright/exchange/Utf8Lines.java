package org.moultwright.exchange;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Finds the line in which a file stops being UTF-8. */
final class Utf8Lines {
    private static final int LONGEST_LINE = 1_000_000;

    private Utf8Lines() {}

    /** The first line of a file, from 1, that is not UTF-8, or the last line if all are; 0 if it cannot be read. */
    static long firstMalformed(FolderFiles files, String name) {
        try (InputStream content = files.open(name).orElse(InputStream.nullInputStream())) {
            return firstMalformed(content);
        } catch (IOException unreadable) {
            return 0;
        }
    }

    private static long firstMalformed(InputStream content) throws IOException {
        try (BufferedInputStream bytes = new BufferedInputStream(content)) {
            byte[] lineBytes = new byte[LONGEST_LINE];
            long line = 1;
            int length = 0;
            for (int next = bytes.read(); next >= 0; next = bytes.read()) {
                if (next == '\n') {
                    if (!isText(lineBytes, length)) {
                        return line;
                    }
                    line++;
                    length = 0;
                } else if (length < LONGEST_LINE) {
                    lineBytes[length++] = (byte) next;
                }
            }
            return line;
        }
    }

    private static boolean isText(byte[] bytes, int length) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(Arrays.copyOf(bytes, length)));
            return true;
        } catch (CharacterCodingException malformed) {
            return false;
        }
    }
}
