package org.moultwright.workflow;

import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Pot;
import org.moultwright.domain.PotEvent;
import org.moultwright.domain.Require;

/**
 * What a deed tells of the pots of one brood.
 *
 * @param brood the brood's code
 * @param pots those that came to be
 * @param events what happened to the animals
 * @param entries what that moved in the brood's ledger
 */
public record PotChanges(String brood, List<Pot> pots, List<PotEvent> events, List<LedgerEntry> entries) {
    public PotChanges {
        Require.text("brood", brood);
        pots = List.copyOf(pots);
        events = List.copyOf(events);
        entries = List.copyOf(entries);
    }

    /** What takes these back: each entry reversed; pots and events are withdrawn with their deed. */
    PotChanges reversal(Supplier<UUID> ids) {
        return new PotChanges(
                brood,
                List.of(),
                List.of(),
                entries.stream().map(entry -> entry.reversal(ids.get())).toList());
    }
}
