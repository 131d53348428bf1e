package org.moultwright.store.book;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Span;
import org.moultwright.store.climate.PlacingTable;
import org.moultwright.store.reading.ProbeTable;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** Which probe measured which container. */
final class ProbeStayTable extends PlaceTable<ProbeStay> {
    ProbeStayTable() {
        super("probe_stay");
    }

    @Override
    void prepare(Handle handle, ProbeStay stay) {
        ProbeTable.numberOf(handle, stay.probe());
    }

    @Override
    Cells cells(ProbeStay stay) {
        return PlacingTable.cellsOf(stay);
    }

    @Override
    RowReader<ProbeStay> reader() {
        return PlacingTable.STAY;
    }

    @Override
    Span span(ProbeStay stay) {
        return stay.span();
    }

    @Override
    ProbeStay withSpan(ProbeStay stay, Span span) {
        return stay.with(span);
    }

    @Override
    Object subject(ProbeStay stay) {
        return List.of(stay.probe(), stay.container());
    }
}
