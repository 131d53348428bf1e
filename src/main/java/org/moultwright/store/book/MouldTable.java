package org.moultwright.store.book;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.MouldNote;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** Mould found. */
final class MouldTable extends EventTable<MouldNote> {
    MouldTable() {
        super("mould_note");
    }

    @Override
    Cells cells(MouldNote note) {
        return new Cells()
                .with("id", note.id())
                .with("happened_at", note.at())
                .with("tray", note.tray())
                .with("grew_on", note.where())
                .with("extent", note.extent())
                .with("action_taken", note.action())
                .with("lost", note.lost());
    }

    @Override
    RowReader<MouldNote> reader(Handle handle, String brood) {
        return row -> new MouldNote(
                row.id("id"),
                row.instant("happened_at"),
                row.text("tray"),
                row.text("grew_on"),
                row.text("extent"),
                row.text("action_taken"),
                row.count("lost"));
    }

    @Override
    Object identity(MouldNote note) {
        return note.id();
    }

    @Override
    Object content(MouldNote note) {
        return List.of(note.at(), note.tray(), note.where(), note.extent(), note.action(), note.lost());
    }
}
