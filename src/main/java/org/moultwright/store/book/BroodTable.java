package org.moultwright.store.book;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.BeliefNote;
import org.moultwright.domain.Brood;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Timing;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;

/** The broods themselves. */
final class BroodTable {
    private final TimingTable timings = new TimingTable("timing", "brood");
    private static final String STANDING =
            "not exists (select 1 from deed undoing where undoing.undoes = brood.begun_by)";

    private final BeliefTable beliefs = new BeliefTable();
    private final PullTable pulls = new PullTable();

    /**
     * Adds a brood whose code is free; one of that code whose beginning was undone gives way.
     *
     * @param begunBy the deed that begins it, empty for one that comes with a folder
     */
    void insert(Handle handle, Brood brood, Optional<UUID> begunBy) {
        Cells cells = new Cells()
                .with("code", brood.code())
                .with("taxon", brood.taxon())
                .with("zone", brood.zone().getId())
                .with("laid_earliest", brood.laid().map(InstantRange::earliest))
                .with("laid_latest", brood.laid().map(InstantRange::latest))
                .with("pulled", brood.pulled())
                .with("reference_celsius", brood.referenceTemperatureCelsius())
                .with("begun_by", begunBy);
        Rows.write(handle, "brood", "code", cells);
        handle.createUpdate("delete from brood_stage where brood = :code")
                .bind("code", brood.code())
                .execute();
        Rows.insert(
                handle,
                "brood_stage",
                brood.stages().stream()
                        .map(stage -> new Cells().with("brood", brood.code()).with("stage", stage.key()))
                        .toList());
        brood.timing().ifPresent(timing -> timings.insert(handle, brood.code(), timing));
    }

    List<Brood> all(Handle handle) {
        return handle.createQuery("select * from brood where " + STANDING + " order by laid_earliest nulls last, code")
                .map(reader(handle).mapper())
                .list();
    }

    Optional<Brood> find(Handle handle, String code) {
        return handle.createQuery("select * from brood where code = :code and " + STANDING)
                .bind("code", code)
                .map(reader(handle).mapper())
                .findFirst();
    }

    /** The brood a deed began, if it began one. */
    Optional<Brood> begunBy(Handle handle, UUID deed) {
        return handle.createQuery("select * from brood where begun_by = :deed")
                .bind("deed", deed)
                .map(reader(handle).mapper())
                .findFirst();
    }

    /** From now on a brood stands by itself: a folder told of it too, whatever becomes of the deed that began it. */
    void standByItself(Handle handle, String code) {
        handle.createUpdate("update brood set begun_by = null where code = :code")
                .bind("code", code)
                .execute();
    }

    private RowReader<Brood> reader(Handle handle) {
        return row -> {
            String code = row.text("code");
            Optional<Instant> latest = row.optionalInstant("laid_latest");
            Optional<Instant> pulled = row.optionalInstant("pulled");
            return new Brood(
                    code,
                    row.text("taxon"),
                    ZoneId.of(row.text("zone")),
                    row.optionalInstant("laid_earliest")
                            .flatMap(earliest -> latest.map(end -> new InstantRange(earliest, end))),
                    pulls.latest(handle, code).or(() -> pulled),
                    stages(handle, code),
                    row.measure("reference_celsius"),
                    timing(handle, code));
        };
    }

    /** What was believed of the timing when the brood came, whatever its keeper came to believe since. */
    Optional<Timing> timingItCameWith(Handle handle, String brood) {
        return timings.find(handle, brood);
    }

    private Optional<Timing> timing(Handle handle, String brood) {
        return beliefs.latest(handle, brood).map(BeliefNote::timing).orElseGet(() -> timingItCameWith(handle, brood));
    }

    private static List<Stage> stages(Handle handle, String brood) {
        RowReader<Stage> reader = row -> row.keyed("stage", Stage::fromKey);
        return handle.createQuery("select stage from brood_stage where brood = :brood")
                .bind("brood", brood)
                .map(reader.mapper())
                .list();
    }
}
