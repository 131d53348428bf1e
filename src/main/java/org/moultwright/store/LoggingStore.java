package org.moultwright.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.store.file.DiskRoom;
import org.moultwright.store.file.HandOverWish;
import org.moultwright.store.file.OwnerNote;
import org.moultwright.store.spool.SpoolFolder;
import org.moultwright.store.spool.SpoolWriter;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.ReadingSink;
import org.moultwright.workflow.TakenBeside;

/**
 * A store as a logger keeps readings in it: in the store itself while nobody else wants it, and else in a spool
 * beside it, which whoever has the store takes in.
 *
 * <p>Promises: what {@link #append} has taken is on disk when it returns, here or there, and comes into the store
 * once. Asked by another program, the logger lets go of the store within {@link #USUAL_TICK} and what is being
 * written; when the store is free again, also after a kill of whoever had it, the logger takes it back. Safe to
 * share.
 */
public final class LoggingStore implements ReadingSink, AutoCloseable {
    /** How often {@link #tick} is to be called. */
    public static final Duration USUAL_TICK = Duration.ofMillis(250);

    /** Trying to open a store reads its file; what is left beside is looked for as often. */
    private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(1);

    private static final int LOOKS_AT_A_NOTE = 30;

    private final Path file;
    private final Turns turns;
    private final InstantSource clock;
    private final OwnerNote owner;
    private @Nullable H2Store store;
    private @Nullable SpoolWriter spool;
    private long lookedAtNanos;
    private int looks;

    /**
     * Opens the store, or begins beside it if another program has it.
     *
     * @throws StoreException if the file is not to be opened for any other reason
     */
    public LoggingStore(Path file, InstantSource clock, Turns turns) {
        this.file = file.toAbsolutePath().normalize();
        this.clock = clock;
        this.turns = turns;
        this.owner = new OwnerNote(this.file);
        try {
            open();
        } catch (StoreException e) {
            if (e.reason() != Reason.IN_USE) {
                throw e;
            }
            turns.leftTo(who());
        }
    }

    @Override
    public synchronized List<Logged> append(String probe, List<Logged> readings) {
        if (store != null) {
            return store.readings().append(probe, readings);
        }
        spooled(writer -> writer.append(probe, readings));
        return readings;
    }

    @Override
    public synchronized void identified(String probe, ProbeIdentity sensor, Instant at) {
        if (store != null) {
            store.readings().identified(probe, sensor, at);
        } else {
            spooled(writer -> writer.identified(probe, sensor, at));
        }
    }

    /** Lets go of the store if it is wanted, takes it back if it is free, and takes in what others left beside it. */
    public synchronized void tick() {
        if (store != null && HandOverWish.standsFor(file)) {
            letGo();
        }
        if (System.nanoTime() - lookedAtNanos < BETWEEN_LOOKS.toNanos()) {
            return;
        }
        lookedAtNanos = System.nanoTime();
        if (store != null) {
            takeIn(store);
        } else if (!HandOverWish.standsFor(file) && mayBeFree()) {
            takeBack();
        }
    }

    @Override
    public synchronized void close() {
        endSpool();
        if (store != null) {
            store.close();
            store = null;
        }
    }

    /** A note may name a process that ended by a kill and whose number another has by now. */
    private boolean mayBeFree() {
        looks++;
        return !owner.isOfARunningProgram() || looks % LOOKS_AT_A_NOTE == 0;
    }

    private void letGo() {
        H2Store wanted = store;
        store = null;
        turns.leftTo("");
        if (wanted != null) {
            wanted.close();
        }
    }

    private void takeBack() {
        try {
            open();
            endSpool();
        } catch (StoreException notYet) {
            // It is still another's, or the disk is full: readings go on into a spool, and this is tried again.
        }
    }

    private void open() {
        H2Store opened = H2Store.openToLog(file);
        store = opened;
        turns.has(opened);
        takeIn(opened);
    }

    private void takeIn(H2Store open) {
        try {
            List<TakenBeside> taken = open.takeInSpools();
            if (!taken.isEmpty()) {
                turns.taken(taken);
            }
        } catch (StoreException wait) {
            // What is beside is safe there, and taken in another time.
        }
    }

    private String who() {
        return owner.read().orElse("another program");
    }

    private void spooled(Writing writing) {
        try {
            if (!DiskRoom.of(file).isLeft()) {
                throw Faults.diskFull(null);
            }
            SpoolWriter open = spool == null ? SpoolWriter.begin(SpoolFolder.of(file), clock.instant()) : spool;
            spool = open;
            writing.to(open);
            if (open.isLarge()) {
                endSpool();
            }
        } catch (IOException e) {
            throw Faults.ofWriting(file, e);
        }
    }

    private void endSpool() {
        SpoolWriter ended = spool;
        spool = null;
        if (ended != null) {
            try {
                ended.close();
            } catch (IOException allWasOnDiskBefore) {
                throw Faults.ofWriting(ended.file(), allWasOnDiskBefore);
            }
        }
    }

    /** Is told who has the store. What hangs on the store, such as the watch over alarms, goes with it. */
    public interface Turns {
        /** The logger has the store; it stays open until {@link #leftTo} returns. */
        void has(H2Store store);

        /** Another program has the store, or is about to. */
        void leftTo(String who);

        /** What others left beside the store is now in it. */
        void taken(List<TakenBeside> taken);
    }

    private interface Writing {
        void to(SpoolWriter writer) throws IOException;
    }
}
