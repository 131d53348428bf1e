package org.moultwright.boot;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.moultwright.boot.machine.ProgramBuild;
import org.moultwright.exchange.LeftRoomFile;
import org.moultwright.store.H2Store;
import org.moultwright.store.StoreException;
import org.moultwright.store.StoreStamp;
import org.moultwright.workflow.Room;
import org.moultwright.workflow.WrittenRoom;

/**
 * Rooms as desks left them, each in a file beside its store: a desk is put together of it while the store is opened. It
 * fits as long as the store is exactly as it was closed, and the program is the same.
 *
 * @param build of this program; empty if rooms are neither kept nor looked for
 */
record LeftRooms(Optional<String> build) {
    private static final String ENDING = ".left";

    static LeftRooms ofThisProgram() {
        return new LeftRooms(ProgramBuild.stamp());
    }

    /**
     * The room of a store that is in use nowhere and exactly as it was left.
     *
     * @throws StoreException if nothing can be written to that store
     */
    Optional<Found> find(Path store) {
        return build.flatMap(own -> H2Store.atRest(store).flatMap(stamp -> found(store, fits(own, stamp))));
    }

    /** Closes a store, and keeps its room as it is left. Where that cannot be done, the next desk waits for its store. */
    void close(H2Store store, Room room) {
        Optional<WrittenRoom> last = build.flatMap(own -> written(room));
        Optional<String> fits = store.closeAtRest().flatMap(stamp -> build.map(own -> fits(own, stamp)));
        if (fits.isPresent() && last.isPresent()) {
            try {
                fileOf(store).keep(fits.get(), last.get());
            } catch (IOException | IllegalArgumentException notKept) {
                // One kept before fits no longer, unless nothing was written.
            }
        }
    }

    /** What is written, if it can be read. */
    static Optional<WrittenRoom> written(Room room) {
        try {
            return Optional.of(room.written());
        } catch (RuntimeException unread) {
            return Optional.empty();
        }
    }

    private static Optional<Found> found(Path store, String fits) {
        H2Store later = H2Store.later(store);
        return fileOf(later).read(fits).map(room -> new Found(later, room));
    }

    private static LeftRoomFile fileOf(H2Store store) {
        return new LeftRoomFile(store.beside(ENDING));
    }

    private static String fits(String build, StoreStamp stamp) {
        return build + ", " + stamp;
    }

    /**
     * A room as it was left.
     *
     * @param store its store, not open yet
     */
    record Found(H2Store store, WrittenRoom room) {}
}
