package org.moultwright.store.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A note beside the store that says who has it open, for whoever finds it locked. The lock itself is the
 * database's; a note left behind by a killed program does no harm.
 */
public final class OwnerNote {
    private static final String LOGGING = ", logging";

    private final ProcessNote note;

    public OwnerNote(Path store) {
        this.note = new ProcessNote(store, ".owner");
    }

    /** Writes down this program as the one that has the store open. */
    public void write() throws IOException {
        note.write("");
    }

    /** Writes down this program as one that has the store open to log, and lets go of it when asked. */
    public void writeLogging() throws IOException {
        note.write(LOGGING);
    }

    public void remove() throws IOException {
        note.remove();
    }

    /** Who has the store open, as far as it is written down. */
    public Optional<String> read() {
        return note.read();
    }

    /** Whether whoever has the store open lets go of it when asked. */
    public boolean isLogging() {
        return read().filter(words -> words.endsWith(LOGGING)).isPresent();
    }

    /** Whether it is this program that wrote it last. */
    public boolean isOfThisProgram() {
        return note.isOfThisProgram();
    }

    /** Whether the program that wrote it still runs. */
    public boolean isOfARunningProgram() {
        return note.isOfARunningProgram();
    }
}
