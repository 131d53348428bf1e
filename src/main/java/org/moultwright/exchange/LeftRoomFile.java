package org.moultwright.exchange;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.CRC32;
import org.moultwright.file.WholeFile;
import org.moultwright.workflow.WrittenRoom;

/**
 * The file in which a room lies as it was left, so that it can be shown before its store is open.
 *
 * <p>It is read where it fits and is whole to the bit; a file that is not is as none. It may be thrown away at any time.
 */
public final class LeftRoomFile {
    private final Path file;

    public LeftRoomFile(Path file) {
        this.file = file;
    }

    /**
     * Keeps a room, in the place of one kept before.
     *
     * @param fits what it fits, such as a state of its store
     * @throws IOException if it cannot be written; one kept before is then kept still
     */
    public void keep(String fits, WrittenRoom room) throws IOException {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(content)) {
            out.writeUTF(fits);
            new RecordWriter(out).write(room);
        }
        byte[] bytes = content.toByteArray();
        WholeFile.write(
                file,
                ByteBuffer.allocate(Long.BYTES + bytes.length)
                        .putLong(sum(bytes, 0))
                        .put(bytes)
                        .array());
    }

    /** The room kept for what fits so. */
    public Optional<WrittenRoom> read(String fits) {
        try {
            byte[] bytes = Files.readAllBytes(file);
            DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
            return in.readLong() == sum(bytes, Long.BYTES) && in.readUTF().equals(fits)
                    ? Optional.of((WrittenRoom) new RecordReader(in).read())
                    : Optional.empty();
        } catch (IOException | ReflectiveOperationException | RuntimeException notUnderstood) {
            return Optional.empty();
        }
    }

    private static long sum(byte[] bytes, int from) {
        CRC32 sum = new CRC32();
        sum.update(bytes, from, bytes.length - from);
        return sum.getValue();
    }
}
