package org.moultwright.store.climate;

import java.util.List;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.store.reading.HandLog;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** Readings written down by hand. Those that stand are in the log of all readings too, where they count. */
public final class HandReadingTable extends RoomTable<HandReading> {
    public HandReadingTable() {
        super("hand_reading");
    }

    @Override
    public void insert(Handle handle, UUID deed, List<HandReading> rows) {
        super.insert(
                handle,
                deed,
                rows.stream().map(row -> HandLog.append(handle, row)).toList());
    }

    /** Takes the readings of a deed that stands no more out of the log, but for those that another deed wrote down too. */
    public void withdraw(Handle handle, UUID deed) {
        List<HandReading> standing = standing(handle);
        ofDeed(handle, deed).stream()
                .filter(row -> !standing.contains(row))
                .forEach(row -> HandLog.remove(handle, row));
    }

    @Override
    protected Cells cells(HandReading row) {
        return new Cells()
                .with("probe", row.probe())
                .with("taken_at", row.reading().takenAt())
                .withNumber("temperature_celsius", row.reading().temperatureCelsius())
                .withNumber("humidity_percent", row.reading().humidityPercent())
                .with("quality", row.reading().quality().key());
    }

    @Override
    protected RowReader<HandReading> reader(Handle handle) {
        return row -> new HandReading(
                row.text("probe"),
                new Reading(
                        row.instant("taken_at"),
                        row.measure("temperature_celsius"),
                        row.measure("humidity_percent"),
                        row.keyed("quality", Quality::fromKey)));
    }
}
