package org.moultwright.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.moultwright.store.book.BookAudit;
import org.moultwright.store.climate.ClimateAudit;
import org.moultwright.store.photo.PhotoAudit;
import org.moultwright.store.reading.ReadingAudit;
import org.moultwright.store.sql.Problem;

/** Reads a whole store and says what in it does not hold. Changes nothing. */
final class StoreCheck {
    /** Rows that must name a row of another table: table, column, the other table, its column. */
    private static final List<Reference> REFERENCES = List.of(
            new Reference("ledger_entry", "brood", "brood", "code"),
            new Reference("ledger_entry", "deed", "deed", "id"),
            new Reference("ledger_entry", "corrects", "ledger_entry", "id"),
            new Reference("tray_check", "brood", "brood", "code"),
            new Reference("tray_check", "deed", "deed", "id"),
            new Reference("tray_look", "tray_check", "tray_check", "id"),
            new Reference("mould_note", "brood", "brood", "code"),
            new Reference("mould_note", "deed", "deed", "id"),
            new Reference("care_note", "brood", "brood", "code"),
            new Reference("care_note", "deed", "deed", "id"),
            new Reference("pot", "brood", "brood", "code"),
            new Reference("pot", "deed", "deed", "id"),
            new Reference("pot_event", "brood", "brood", "code"),
            new Reference("pot_event", "deed", "deed", "id"),
            new Reference("pot_event", "pot", "pot", "code"),
            new Reference("tray_photo", "brood", "brood", "code"),
            new Reference("tray_photo", "deed", "deed", "id"),
            new Reference("run_up_event", "brood", "brood", "code"),
            new Reference("pull_note", "brood", "brood", "code"),
            new Reference("pull_note", "deed", "deed", "id"),
            new Reference("calibration", "deed", "deed", "id"),
            new Reference("calibration", "probe", "probe", "code"),
            new Reference("calibration_point", "calibration", "calibration", "id"),
            new Reference("display_note", "deed", "deed", "id"),
            new Reference("extremes", "brood", "brood", "code"),
            new Reference("extremes", "deed", "deed", "id"),
            new Reference("probe_placing", "deed", "deed", "id"),
            new Reference("container_move", "deed", "deed", "id"),
            new Reference("probe_placing", "probe", "probe", "code"),
            new Reference("brought_readings", "deed", "deed", "id"),
            new Reference("brought_readings", "probe_no", "probe", "probe_no"),
            new Reference("hand_reading", "deed", "deed", "id"),
            new Reference("hand_reading", "probe", "probe", "code"),
            new Reference("deed", "brood", "brood", "code"),
            new Reference("deed", "undoes", "deed", "id"),
            new Reference("brood_stage", "brood", "brood", "code"),
            new Reference("timing", "brood", "brood", "code"),
            new Reference("timing_median", "brood", "timing", "brood"),
            new Reference("timing_rate_point", "brood", "timing", "brood"),
            new Reference("brood_stay", "place", "stay", "row_no"),
            new Reference("brood_set_point", "place", "set_point", "row_no"),
            new Reference("brood_probe_stay", "place", "probe_stay", "row_no"),
            new Reference("probe_stay", "probe", "probe", "code"),
            new Reference("reading_row", "probe_no", "probe", "probe_no"),
            new Reference("reading_hour", "probe_no", "probe", "probe_no"),
            new Reference("roll_up", "probe_no", "probe", "probe_no"),
            new Reference("probe_sensor", "probe", "probe", "code"));

    private StoreCheck() {}

    /** @param photos where the pictures of its photos are */
    static StoreReport of(Handle handle, Path photos) {
        List<Problem> problems = new ArrayList<>();
        int version = version(handle);
        if (version != Migrations.OURS.latest()) {
            problems.add(new Problem(
                    StoreContent.HISTORY_TABLE,
                    "version",
                    "version " + Migrations.OURS.latest() + ", found " + version));
        }
        REFERENCES.forEach(reference -> problems.addAll(orphans(handle, reference)));
        BookAudit book = BookAudit.of(handle);
        ReadingAudit readings = ReadingAudit.of(handle);
        problems.addAll(book.problems());
        problems.addAll(readings.problems());
        problems.addAll(ClimateAudit.of(handle));
        problems.addAll(PhotoAudit.of(handle, photos));
        return new StoreReport(version, book.broods(), book.entries(), readings.readings(), problems);
    }

    private static int version(Handle handle) {
        List<Integer> versions = handle.createQuery(
                        "select \"version\" from \"" + StoreContent.HISTORY_TABLE + "\" where \"version\" is not null")
                .mapTo(Integer.class)
                .list();
        return versions.isEmpty() ? 0 : Collections.max(versions);
    }

    private static List<Problem> orphans(Handle handle, Reference reference) {
        String found = handle.createQuery("select count(*) from %s child where child.%s is not null and not exists"
                                .formatted(reference.table(), reference.column())
                        + " (select 1 from %s parent where parent.%s = child.%s)"
                                .formatted(reference.parent(), reference.key(), reference.column()))
                .mapTo(String.class)
                .one();
        return found.equals("0")
                ? List.of()
                : List.of(new Problem(
                        reference.table(),
                        found + " rows",
                        reference.column() + " must stand in " + reference.parent()));
    }

    private record Reference(String table, String column, String parent, String key) {}
}
