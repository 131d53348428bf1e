package org.moultwright.store.book;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.RunUpEvent;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** What happened to the mothers before the sacs were pulled. */
final class RunUpTable extends EventTable<RunUpEvent> {
    RunUpTable() {
        super("run_up_event");
    }

    @Override
    Cells cells(RunUpEvent event) {
        return new Cells()
                .with("id", event.id())
                .with("happened_at", event.at())
                .with("what", event.what())
                .with("note", event.note());
    }

    @Override
    RowReader<RunUpEvent> reader(Handle handle, String brood) {
        return row -> new RunUpEvent(row.id("id"), row.instant("happened_at"), row.text("what"), row.text("note"));
    }

    @Override
    Object identity(RunUpEvent event) {
        return event.id();
    }

    @Override
    Object content(RunUpEvent event) {
        return List.of(event.at(), event.what(), event.note());
    }
}
