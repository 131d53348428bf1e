package org.moultwright.store.book;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.PotEvent;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** What happened to the animals of pots. */
final class PotEventTable extends EventTable<PotEvent> {
    private static final RowReader<PotEvent> EVENT = row -> new PotEvent(
            row.id("id"),
            row.instant("happened_at"),
            row.text("pot"),
            row.keyed("what", PotEvent.What::fromKey),
            row.text("note"));

    PotEventTable() {
        super("pot_event");
    }

    @Override
    Cells cells(PotEvent event) {
        return new Cells()
                .with("id", event.id())
                .with("happened_at", event.at())
                .with("pot", event.pot())
                .with("what", event.what().key())
                .with("note", event.note());
    }

    @Override
    RowReader<PotEvent> reader(Handle handle, String brood) {
        return EVENT;
    }

    @Override
    Object identity(PotEvent event) {
        return event.id();
    }

    @Override
    Object content(PotEvent event) {
        return List.of(event.at(), event.pot(), event.what(), event.note());
    }
}
