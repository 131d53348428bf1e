package org.moultwright.store.book;

import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** What containers were set to. */
final class SetPointTable extends PlaceTable<SetPoint> {
    SetPointTable() {
        super("set_point");
    }

    @Override
    Cells cells(SetPoint point) {
        return cells(point.span())
                .with("container", point.container())
                .with("temperature_celsius", point.temperatureCelsius())
                .withNumber("humidity_percent", point.humidityPercent());
    }

    @Override
    RowReader<SetPoint> reader() {
        return row -> new SetPoint(
                row.text("container"),
                spanReader().read(row),
                row.measure("temperature_celsius"),
                row.measure("humidity_percent"));
    }

    @Override
    Span span(SetPoint point) {
        return point.span();
    }

    @Override
    SetPoint withSpan(SetPoint point, Span span) {
        return new SetPoint(point.container(), span, point.temperatureCelsius(), point.humidityPercent());
    }

    @Override
    Object subject(SetPoint point) {
        return point.container();
    }
}
