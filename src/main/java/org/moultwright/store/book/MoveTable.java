package org.moultwright.store.book;

import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.ContainerMove;
import org.moultwright.store.climate.RoomTable;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** Where containers were moved to, as written at the desk. */
final class MoveTable extends RoomTable<ContainerMove> {
    private static final String PLACED = "placed";
    private static final String PUT_AWAY = "put away";

    MoveTable() {
        super("container_move");
    }

    @Override
    protected Cells cells(ContainerMove move) {
        return new Cells()
                .with("container", move.container())
                .with("kind", move.kind().key())
                .with("inside", move.inside())
                .with("how", move.to().isPresent() ? PLACED : PUT_AWAY)
                .with("moved_at", move.at());
    }

    @Override
    protected RowReader<ContainerMove> reader(Handle handle) {
        return row -> {
            Optional<String> inside = row.optionalText("inside");
            return new ContainerMove(
                    row.text("container"),
                    row.keyed("kind", ContainerKind::fromKey),
                    row.text("how").equals(PUT_AWAY) ? Optional.empty() : Optional.of(new ContainerMove.Place(inside)),
                    row.instant("moved_at"));
        };
    }
}
