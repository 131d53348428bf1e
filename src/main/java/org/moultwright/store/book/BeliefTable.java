package org.moultwright.store.book;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.BeliefNote;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** What keepers came to believe of their broods' timing. */
final class BeliefTable extends EventTable<BeliefNote> {
    private final TimingTable timings = new TimingTable("believed_timing", "note");

    BeliefTable() {
        super("belief_note");
    }

    /** The one that holds, if any was written down. */
    Optional<BeliefNote> latest(Handle handle, String brood) {
        return standing(handle, brood).stream().reduce((earlier, later) -> later);
    }

    @Override
    void insert(Handle handle, String brood, Optional<UUID> deed, List<BeliefNote> rows) {
        super.insert(handle, brood, deed, rows);
        rows.forEach(row -> row.timing().ifPresent(timing -> timings.insert(handle, row.id(), timing)));
    }

    @Override
    Cells cells(BeliefNote row) {
        return new Cells().with("id", row.id()).with("happened_at", row.at());
    }

    @Override
    RowReader<BeliefNote> reader(Handle handle, String brood) {
        return row -> new BeliefNote(row.id("id"), row.instant("happened_at"), timings.find(handle, row.id("id")));
    }

    @Override
    Object identity(BeliefNote row) {
        return row.id();
    }

    @Override
    Object content(BeliefNote row) {
        return row.timing();
    }
}
