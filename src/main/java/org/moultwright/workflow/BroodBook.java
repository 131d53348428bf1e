package org.moultwright.workflow;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.LessonNote;
import org.moultwright.domain.Shelf;

/**
 * The keeper's book of broods.
 *
 * <p>What a method has written is on disk when it returns; what it could not write leaves no trace. Faults
 * of the disk or the file come as an unchecked exception of the store with a reason.
 */
public interface BroodBook {

    /** All broods, the one laid first leading; those of unknown laying last, by code. */
    List<Brood> broods();

    /**
     * Everything written about one brood except its probes' readings, which are in the {@link ReadingLog}. What
     * was written at the desk of the climate of a container the brood knows is written about it, and so is every
     * place its trays and their containers were moved to at the desk.
     * Looks, notes and pots of undone deeds are left out; the ledger keeps their entries and the reversals.
     */
    Optional<BroodRecord> find(String code);

    /**
     * Takes in a brood with its readings, all or nothing: what is already there, by id or by content, stays
     * as it is, so that taking in the same brood twice changes nothing.
     *
     * @param record the brood; its own readings are ignored in favour of {@code readings}
     * @param readings hands over the readings, probe by probe, while the transaction is open
     * @throws IllegalArgumentException if the store knows this brood under other facts, naming the fact
     */
    TakenIn takeIn(BroodRecord record, ReadingSource readings);

    /**
     * Keeps a deed. One that undoes another also withdraws that one's looks, notes, pots, events of pots, moves and
     * what it wrote of the climate, readings among it.
     *
     * @throws IllegalArgumentException if the brood's ledger could not hold the deed's entries, or the
     *     deed it undoes does not stand
     */
    void keep(Deed deed);

    /** The completed broods from which nothing is to be learned, by code, each with the note that says so. */
    Map<String, LessonNote> leftOut();

    /** The latest deeds that stand, newest first, at most {@code most}; undone ones and undoings are left out. */
    List<Deed.Summary> latestDeeds(int most);

    /** The rows of a deed as it was kept. */
    Optional<Deed> deed(UUID id);

    /** Where every container of the room stood, as told by brood folders and by the moves that stand. */
    Shelf shelf();

    /** How many rows of each sort a brood brought that were not there before. */
    record TakenIn(int rows, long readings) {
        public boolean changedNothing() {
            return rows == 0 && readings == 0;
        }
    }
}
