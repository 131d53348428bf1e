package org.moultwright.store.climate;

import org.jdbi.v3.core.Handle;
import org.moultwright.domain.DisplayNote;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** What displays showed. */
public final class DisplayTable extends RoomTable<DisplayNote> {
    public DisplayTable() {
        super("display_note");
    }

    @Override
    protected Cells cells(DisplayNote note) {
        return new Cells()
                .with("id", note.id())
                .with("happened_at", note.at())
                .with("container", note.container())
                .with("temperature_celsius", note.celsius())
                .with("step_celsius", note.stepCelsius())
                .with("note", note.note());
    }

    @Override
    protected RowReader<DisplayNote> reader(Handle handle) {
        return row -> new DisplayNote(
                row.id("id"),
                row.instant("happened_at"),
                row.text("container"),
                row.measure("temperature_celsius"),
                row.measure("step_celsius"),
                row.text("note"));
    }
}
