package org.moultwright.store.spool;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The next whole lines of a spool. A last line without an end is left for later: it is still being written, or was
 * never acknowledged.
 *
 * @param untilBytes where they end in the file
 * @param isDamaged whether there were any that nobody can read
 */
record SpoolPart(List<SpoolLine> lines, long untilBytes, boolean isDamaged) {
    private static final int MOST_BYTES = 1 << 19;

    static SpoolPart read(Path file, long fromBytes) throws IOException {
        byte[] bytes;
        try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "r")) {
            long left = Math.max(0, open.length() - fromBytes);
            bytes = new byte[(int) Math.min(left, MOST_BYTES)];
            open.seek(fromBytes);
            open.readFully(bytes);
        }
        List<SpoolLine> lines = new ArrayList<>();
        boolean isDamaged = false;
        int begin = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                Optional<SpoolLine> line = SpoolLine.parse(new String(bytes, begin, i - begin, StandardCharsets.UTF_8));
                line.ifPresent(lines::add);
                isDamaged |= line.isEmpty();
                begin = i + 1;
            }
        }
        return new SpoolPart(lines, fromBytes + begin, isDamaged);
    }
}
