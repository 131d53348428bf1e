package org.moultwright.exchange;

import java.time.Instant;
import java.util.List;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.RunUpEvent;

/** The tables of notes: mould, care, and the mother's run-up. */
final class NoteTables {
    private static final String MOULD_FILE = "mould.csv";
    private static final String CARE_FILE = "care.csv";
    private static final String RUN_UP_FILE = "runup.csv";

    private NoteTables() {}

    static Table<MouldNote> mould(RowIds ids) {
        return new Table<>(
                MOULD_FILE,
                List.of("time", "tray", "where", "extent", "action", "lost"),
                List.of("time", "tray", "where"),
                MouldNote::at,
                row -> mould(row, ids),
                note -> List.of(
                        Cell.instant(note.at()),
                        Cell.text(note.tray()),
                        Cell.text(note.where()),
                        Cell.text(note.extent()),
                        Cell.text(note.action()),
                        String.valueOf(note.lost())));
    }

    static Table<CareNote> care(RowIds ids) {
        return new Table<>(
                CARE_FILE,
                List.of("time", "tray", "what", "note"),
                List.of("time", "tray", "what"),
                CareNote::at,
                row -> care(row, ids),
                note -> List.of(
                        Cell.instant(note.at()),
                        Cell.text(note.tray()),
                        Cell.text(note.what()),
                        Cell.text(note.note())));
    }

    static Table<RunUpEvent> runUp(RowIds ids) {
        return new Table<>(
                RUN_UP_FILE,
                List.of("time", "what", "note"),
                List.of("time", "what"),
                RunUpEvent::at,
                row -> runUp(row, ids),
                event -> List.of(Cell.instant(event.at()), Cell.text(event.what()), Cell.text(event.note())));
    }

    private static MouldNote mould(Row row, RowIds ids) throws Row.Unusable {
        Instant at = row.instant("time");
        String tray = row.required("tray");
        String where = row.required("where");
        String extent = row.text("extent");
        String action = row.text("action");
        int lost = row.text("lost").isEmpty() ? 0 : row.count("lost", 0);
        return new MouldNote(
                ids.of(MOULD_FILE, at, tray, where, extent, action, lost), at, tray, where, extent, action, lost);
    }

    private static CareNote care(Row row, RowIds ids) throws Row.Unusable {
        Instant at = row.instant("time");
        String tray = row.required("tray");
        String what = row.required("what");
        String note = row.text("note");
        return new CareNote(ids.of(CARE_FILE, at, tray, what, note), at, tray, what, note);
    }

    private static RunUpEvent runUp(Row row, RowIds ids) throws Row.Unusable {
        Instant at = row.instant("time");
        String what = row.required("what");
        String note = row.text("note");
        return new RunUpEvent(ids.of(RUN_UP_FILE, at, what, note), at, what, note);
    }
}
