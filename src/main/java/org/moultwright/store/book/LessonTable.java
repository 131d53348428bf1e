package org.moultwright.store.book;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.LessonNote;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** Which completed broods are to teach later ones. */
final class LessonTable extends EventTable<LessonNote> {
    private static final RowReader<LessonNote> NOTE = row -> new LessonNote(
            row.id("id"), row.text("brood"), row.instant("happened_at"), row.flag("left_out"), row.text("reason"));

    LessonTable() {
        super("lesson_note");
    }

    /** The notes that hold of broods left out, by brood. */
    Map<String, LessonNote> leftOut(Handle handle) {
        List<LessonNote> standing = handle.createQuery("select * from lesson_note where not exists"
                        + " (select 1 from deed undoing where undoing.undoes = lesson_note.deed) order by row_no")
                .map(NOTE.mapper())
                .list();
        Map<String, LessonNote> latest = new HashMap<>();
        standing.forEach(note -> latest.put(note.brood(), note));
        latest.values().removeIf(note -> !note.isLeftOut());
        return latest;
    }

    @Override
    Cells cells(LessonNote row) {
        return new Cells()
                .with("id", row.id())
                .with("happened_at", row.at())
                .with("left_out", row.isLeftOut())
                .with("reason", row.reason());
    }

    @Override
    RowReader<LessonNote> reader(Handle handle, String brood) {
        return NOTE;
    }

    @Override
    Object identity(LessonNote row) {
        return row.id();
    }

    @Override
    Object content(LessonNote row) {
        return row.isLeftOut() + row.reason();
    }
}
