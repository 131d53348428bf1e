package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.Check;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Require;

/**
 * All that the keeper wrote down of one brood at one go. It is kept whole or not at all, and undone whole.
 *
 * @param summary what was done, in a few words, for the list of what can be undone
 * @param undoes the deed this one takes back, if it is an undoing
 */
public record Deed(Summary summary, Optional<UUID> undoes, Content content) {

    /**
     * How a deed is named and listed.
     *
     * @param id names the deed for ever
     * @param brood the code of the brood it is about
     * @param doneAt when the keeper wrote it down, by the clock of this machine
     * @param words what was done, such as "A1 counted"
     */
    public record Summary(UUID id, String brood, Instant doneAt, String words) {
        public Summary {
            Require.text("brood", brood);
            Require.text("words", words);
        }
    }

    /** The rows of a deed; any list may be empty. */
    public record Content(
            List<LedgerEntry> entries, List<Check> checks, List<MouldNote> mould, List<CareNote> care, List<Pot> pots) {
        public static final Content NOTHING = new Content(List.of(), List.of(), List.of(), List.of(), List.of());

        public Content {
            entries = List.copyOf(entries);
            checks = List.copyOf(checks);
            mould = List.copyOf(mould);
            care = List.copyOf(care);
            pots = List.copyOf(pots);
        }

        public static Content ofEntries(List<LedgerEntry> entries) {
            return new Content(entries, List.of(), List.of(), List.of(), List.of());
        }
    }
}
