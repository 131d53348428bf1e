package org.moultwright.store.book;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.CareNote;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** Things done for trays, and notes on them. */
final class CareTable extends EventTable<CareNote> {
    CareTable() {
        super("care_note");
    }

    @Override
    Cells cells(CareNote note) {
        return new Cells()
                .with("id", note.id())
                .with("happened_at", note.at())
                .with("tray", note.tray())
                .with("what", note.what())
                .with("note", note.note());
    }

    @Override
    RowReader<CareNote> reader(Handle handle, String brood) {
        return row -> new CareNote(
                row.id("id"), row.instant("happened_at"), row.text("tray"), row.text("what"), row.text("note"));
    }

    @Override
    Object identity(CareNote note) {
        return note.id();
    }

    @Override
    Object content(CareNote note) {
        return List.of(note.at(), note.tray(), note.what(), note.note());
    }
}
