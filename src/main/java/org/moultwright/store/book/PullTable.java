package org.moultwright.store.book;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.PullNote;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** When sacs were taken from their mothers, as written at the desk. */
final class PullTable extends EventTable<PullNote> {
    PullTable() {
        super("pull_note");
    }

    /** When a sac was last said to have been taken, if that was written at all. */
    Optional<Instant> latest(Handle handle, String brood) {
        return standing(handle, brood).stream().map(PullNote::at).reduce((earlier, later) -> later);
    }

    @Override
    Cells cells(PullNote note) {
        return new Cells().with("id", note.id()).with("happened_at", note.at());
    }

    @Override
    RowReader<PullNote> reader(Handle handle, String brood) {
        return row -> new PullNote(row.id("id"), row.instant("happened_at"));
    }

    @Override
    Object identity(PullNote note) {
        return note.id();
    }

    @Override
    Object content(PullNote note) {
        return note.at();
    }
}
