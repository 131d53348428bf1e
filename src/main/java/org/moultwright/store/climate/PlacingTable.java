package org.moultwright.store.climate;

import java.util.List;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Span;
import org.moultwright.store.reading.ProbeTable;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** Where probes were put, as written at the desk. */
public final class PlacingTable extends RoomTable<ProbeStay> {
    public static final RowReader<ProbeStay> STAY = row -> new ProbeStay(
            row.text("probe"),
            row.text("container"),
            new Span(row.instant("from_at"), row.optionalInstant("until_at")),
            row.measure("offset_celsius"),
            row.measure("sd_celsius"));

    public PlacingTable() {
        super("probe_placing");
    }

    @Override
    public void insert(Handle handle, UUID deed, List<ProbeStay> rows) {
        rows.forEach(row -> ProbeTable.numberOf(handle, row.probe()));
        super.insert(handle, deed, rows);
    }

    /** The cells of what a stay says. */
    public static Cells cellsOf(ProbeStay stay) {
        return new Cells()
                .with("probe", stay.probe())
                .with("container", stay.container())
                .with("from_at", stay.span().from())
                .with("until_at", stay.span().to())
                .with("offset_celsius", stay.offsetCelsius())
                .with("sd_celsius", stay.sdCelsius());
    }

    @Override
    protected Cells cells(ProbeStay stay) {
        return cellsOf(stay);
    }

    @Override
    protected RowReader<ProbeStay> reader(Handle handle) {
        return STAY;
    }
}
