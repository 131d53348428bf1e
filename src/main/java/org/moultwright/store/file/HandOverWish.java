package org.moultwright.store.file;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.locks.LockSupport;

/** A note beside the store by which a program asks the logger that has it open to let go of it. */
public final class HandOverWish implements AutoCloseable {
    private final ProcessNote note;

    private HandOverWish(Path store) {
        this.note = new ProcessNote(store, ".wanted");
    }

    /** Asks; closing takes the wish back, fulfilled or not. */
    public static HandOverWish of(Path store) throws IOException {
        HandOverWish wish = new HandOverWish(store);
        wish.note.write("");
        return wish;
    }

    /** Whether a running program asks for a store. */
    public static boolean standsFor(Path store) {
        return new ProcessNote(store, ".wanted").isOfARunningProgram();
    }

    /** Gives whoever is asked a little time. */
    public void await(Duration pause) {
        LockSupport.parkNanos(pause.toNanos());
    }

    @Override
    public void close() throws IOException {
        note.remove();
    }
}
