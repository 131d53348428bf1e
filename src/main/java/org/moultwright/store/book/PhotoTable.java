package org.moultwright.store.book;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.PhotoNote;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** Photos of trays; the pictures are files beside the store. */
final class PhotoTable extends EventTable<PhotoNote> {
    PhotoTable() {
        super("tray_photo");
    }

    @Override
    Cells cells(PhotoNote note) {
        return new Cells()
                .with("id", note.id())
                .with("happened_at", note.at())
                .with("tray", note.tray())
                .with("picture", note.file())
                .with("called", note.name());
    }

    @Override
    RowReader<PhotoNote> reader(Handle handle, String brood) {
        return row -> new PhotoNote(
                row.id("id"), row.instant("happened_at"), row.text("tray"), row.text("picture"), row.text("called"));
    }

    @Override
    Object identity(PhotoNote note) {
        return note.id();
    }

    @Override
    Object content(PhotoNote note) {
        return List.of(note.at(), note.tray(), note.file(), note.name());
    }
}
