package org.moultwright.store.book;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;
import org.moultwright.workflow.Deed;

/** What the keeper did, deed by deed; a deed stands while no other undoes it. */
final class DeedTable {
    private static final String STANDING =
            "undoes is null and not exists (select 1 from deed undoing where undoing.undoes = deed.id)";
    private static final RowReader<Deed.Summary> SUMMARY =
            row -> new Deed.Summary(row.id("id"), row.optionalText("brood"), row.instant("done_at"), row.text("words"));
    private static final RowReader<Head> HEAD = row -> new Head(SUMMARY.read(row), row.optionalId("undoes"));

    void insert(Handle handle, Head head) {
        Deed.Summary summary = head.summary();
        Rows.insert(
                handle,
                "deed",
                List.of(new Cells()
                        .with("id", summary.id())
                        .with("brood", summary.brood())
                        .with("done_at", summary.doneAt())
                        .with("words", summary.words())
                        .with("undoes", head.undoes())));
    }

    /** Takes out a deed that came to nothing, within the transaction that wrote it. */
    void forget(Handle handle, UUID id) {
        handle.createUpdate("delete from deed where id = :id").bind("id", id).execute();
    }

    Optional<Head> find(Handle handle, UUID id) {
        return handle.createQuery("select * from deed where id = :id")
                .bind("id", id)
                .map(HEAD.mapper())
                .findFirst();
    }

    boolean stands(Handle handle, UUID id) {
        return handle.createQuery("select * from deed where id = :id and " + STANDING)
                .bind("id", id)
                .map(HEAD.mapper())
                .findFirst()
                .isPresent();
    }

    List<Deed.Summary> latestStanding(Handle handle, int most) {
        return handle.createQuery(
                        "select * from deed where " + STANDING + " order by row_no desc fetch first :most rows only")
                .bind("most", most)
                .map(SUMMARY.mapper())
                .list();
    }

    /** A deed without its rows. */
    record Head(Deed.Summary summary, Optional<UUID> undoes) {}
}
