package org.moultwright.store.spool;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ReadingLog.Logged;

/**
 * Appends what a logger hears to a file beside the store. What a call has written is on disk when it returns; what
 * a failed call wrote in part is written over by the next. The file is locked while it may still grow.
 *
 * <p>Not safe to share.
 */
public final class SpoolWriter implements AutoCloseable {
    /** Beyond this another file is begun, so that the first can be removed once it is taken in. */
    private static final long LARGEST_BYTES = 1 << 20;

    private final Path file;
    private final FileChannel channel;
    private long length;

    private SpoolWriter(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Begins a file of its own. */
    public static SpoolWriter begin(SpoolFolder folder, Instant now) throws IOException {
        Files.createDirectories(folder.path());
        Path file = folder.file(now.toEpochMilli(), UUID.randomUUID());
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        try {
            channel.lock();
            return new SpoolWriter(file, channel);
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    public void append(String probe, List<Logged> readings) throws IOException {
        StringBuilder lines = new StringBuilder();
        readings.forEach(logged -> lines.append(new SpoolLine.Heard(probe, logged).text()));
        write(lines.toString());
    }

    public void identified(String probe, ProbeIdentity identity, Instant at) throws IOException {
        write(new SpoolLine.Identified(probe, identity, at).text());
    }

    public boolean isLarge() {
        return length > LARGEST_BYTES;
    }

    public Path file() {
        return file;
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }

    private void write(String lines) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(lines.getBytes(StandardCharsets.UTF_8));
        long position = length;
        while (bytes.hasRemaining()) {
            position += channel.write(bytes, position);
        }
        channel.truncate(position);
        channel.force(false);
        length = position;
    }
}
