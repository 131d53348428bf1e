package org.moultwright.store.climate;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Extremes;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;

/** Lowest and highest values: of one brood where they came with its folder, else of the room, by a deed. */
public final class ExtremesTable extends RoomTable<Extremes> {
    public ExtremesTable() {
        super("extremes");
    }

    @Override
    protected Cells cells(Extremes row) {
        return new Cells()
                .with("container", row.container())
                .with("from_at", row.from())
                .with("until_at", row.to())
                .with("lowest_celsius", row.lowestCelsius())
                .with("highest_celsius", row.highestCelsius())
                .withNumber("lowest_percent", row.lowestPercent())
                .withNumber("highest_percent", row.highestPercent());
    }

    @Override
    protected RowReader<Extremes> reader(Handle handle) {
        return row -> new Extremes(
                row.text("container"),
                row.instant("from_at"),
                row.instant("until_at"),
                row.measure("lowest_celsius"),
                row.measure("highest_celsius"),
                row.measure("lowest_percent"),
                row.measure("highest_percent"));
    }

    /** Those of the room that no deed withdrew, in the order written. */
    public List<Extremes> ofRoom(Handle handle) {
        return standing(handle, "brood is null");
    }

    public List<Extremes> ofBrood(Handle handle, String brood) {
        return handle.createQuery("select * from extremes where brood = :brood order by row_no")
                .bind("brood", brood)
                .map(reader(handle).mapper())
                .list();
    }

    public void insertOfBrood(Handle handle, String brood, List<Extremes> rows) {
        Rows.insert(
                handle,
                "extremes",
                rows.stream().map(row -> cells(row).with("brood", brood)).toList());
    }
}
