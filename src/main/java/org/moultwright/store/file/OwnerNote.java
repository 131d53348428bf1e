package org.moultwright.store.file;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A note beside the store that says who has it open, for whoever finds it locked. The lock itself is the
 * database's; a note left behind by a killed program does no harm.
 */
public final class OwnerNote {
    private final Path note;

    public OwnerNote(Path store) {
        this.note = store.resolveSibling(store.getFileName() + ".owner");
    }

    /** Writes down this program as the one that has the store open. */
    public void write() throws IOException {
        ProcessHandle self = ProcessHandle.current();
        String since =
                self.info().startInstant().map(start -> ", started " + start).orElse("");
        Files.writeString(note, "process " + self.pid() + " on " + host() + since);
    }

    public void remove() throws IOException {
        Files.deleteIfExists(note);
    }

    /** Who has the store open, as far as it is written down. */
    public Optional<String> read() {
        try {
            return Optional.of(Files.readString(note).strip()).filter(words -> !words.isEmpty());
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static String host() {
        try {
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException e) {
            return "this machine";
        }
    }
}
