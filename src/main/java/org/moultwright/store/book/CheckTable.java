package org.moultwright.store.book;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Check;
import org.moultwright.domain.Look;
import org.moultwright.domain.Stage;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;

/** Checks of trays, with a row for every stage looked at. */
final class CheckTable extends EventTable<Check> {
    static final Comparator<Check> BY_TIME = Comparator.comparing(Check::at);

    CheckTable() {
        super("tray_check");
    }

    @Override
    void insert(Handle handle, String brood, Optional<UUID> deed, List<Check> checks) {
        super.insert(handle, brood, deed, checks);
        Rows.insert(
                handle, "tray_look", checks.stream().flatMap(CheckTable::looks).toList());
    }

    @Override
    Cells cells(Check check) {
        return new Cells()
                .with("id", check.id())
                .with("happened_at", check.at())
                .with("tray", check.tray());
    }

    @Override
    RowReader<Check> reader(Handle handle, String brood) {
        Map<UUID, Map<Stage, Look>> looks = looks(handle, brood);
        return row -> {
            UUID id = row.id("id");
            return new Check(id, row.text("tray"), row.instant("happened_at"), looks.getOrDefault(id, Map.of()));
        };
    }

    @Override
    Object identity(Check check) {
        return check.id();
    }

    @Override
    Object content(Check check) {
        return List.of(check.tray(), check.at(), check.looks());
    }

    private static Stream<Cells> looks(Check check) {
        return check.looks().entrySet().stream()
                .map(look -> new Cells()
                        .with("tray_check", check.id())
                        .with("stage", look.getKey().key())
                        .with("how", look.getValue().key())
                        .with("animals", LookCells.animals(look.getValue()))
                        .with("looked_at", LookCells.lookedAt(look.getValue())));
    }

    private static Map<UUID, Map<Stage, Look>> looks(Handle handle, String brood) {
        Map<UUID, Map<Stage, Look>> looks = new HashMap<>();
        RowReader<Map<Stage, Look>> reader = row -> {
            Map<Stage, Look> ofCheck = looks.computeIfAbsent(row.id("tray_check"), id -> new EnumMap<>(Stage.class));
            ofCheck.put(row.keyed("stage", Stage::fromKey), LookCells.read(row));
            return ofCheck;
        };
        handle.createQuery("select tray_look.* from tray_look join tray_check on tray_look.tray_check = tray_check.id"
                        + " where tray_check.brood = :brood")
                .bind("brood", brood)
                .map(reader.mapper())
                .list();
        return looks;
    }
}
