package org.moultwright.store.book;

import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stay;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** Where containers stood. */
final class StayTable extends PlaceTable<Stay> {
    StayTable() {
        super("stay");
    }

    @Override
    Cells cells(Stay stay) {
        return cells(stay.span())
                .with("container", stay.container())
                .with("kind", stay.kind().key())
                .with("inside", stay.inside());
    }

    @Override
    RowReader<Stay> reader() {
        return row -> new Stay(
                row.text("container"),
                row.keyed("kind", ContainerKind::fromKey),
                row.optionalText("inside"),
                spanReader().read(row));
    }

    @Override
    Span span(Stay stay) {
        return stay.span();
    }

    @Override
    Stay withSpan(Stay stay, Span span) {
        return new Stay(stay.container(), stay.kind(), stay.inside(), span);
    }

    @Override
    Object subject(Stay stay) {
        return stay.container();
    }
}
