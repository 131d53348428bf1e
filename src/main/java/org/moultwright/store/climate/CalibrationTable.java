package org.moultwright.store.climate;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.CalibrationMethod;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Correction;
import org.moultwright.store.reading.ProbeTable;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;

/** Calibrations with their points. */
public final class CalibrationTable extends RoomTable<Calibration> {
    private static final RowReader<CalibrationPoint> POINT = row -> new CalibrationPoint(
            row.measure("reference_value"),
            row.measure("reference_sd"),
            row.measure("indicated"),
            row.measure("indicated_sd"),
            row.text("source"));
    private static final RowReader<Correction> CORRECTION = row -> new Correction(
            row.measure("origin"),
            row.measure("correction"),
            row.measure("slope"),
            row.measure("correction_variance"),
            row.measure("slope_variance"),
            row.measure("covariance"),
            row.measure("common_sd"));

    public CalibrationTable() {
        super("calibration");
    }

    @Override
    public void insert(Handle handle, UUID deed, List<Calibration> rows) {
        rows.forEach(row -> ProbeTable.numberOf(handle, row.probe()));
        super.insert(handle, deed, rows);
        rows.forEach(row -> insertPoints(handle, row));
    }

    @Override
    protected Cells cells(Calibration row) {
        Correction correction = row.correction();
        return new Cells()
                .with("id", row.id())
                .with("probe", row.probe())
                .with("method", row.method().key())
                .with("done_at", row.doneAt())
                .with("applies_from", row.appliesFrom())
                .with("expires_at", row.expiresAt())
                .with("origin", correction.origin())
                .with("correction", correction.offset())
                .with("slope", correction.slope())
                .with("correction_variance", correction.offsetVariance())
                .with("slope_variance", correction.slopeVariance())
                .with("covariance", correction.covariance())
                .with("common_sd", correction.commonSd())
                .with("note", row.note());
    }

    @Override
    protected RowReader<Calibration> reader(Handle handle) {
        return row -> new Calibration(
                row.id("id"),
                row.text("probe"),
                row.keyed("method", CalibrationMethod::fromKey),
                row.instant("done_at"),
                row.instant("applies_from"),
                row.instant("expires_at"),
                points(handle, row.id("id")),
                CORRECTION.read(row),
                row.text("note"));
    }

    private static void insertPoints(Handle handle, Calibration calibration) {
        List<Cells> rows = new ArrayList<>();
        for (CalibrationPoint point : calibration.points()) {
            rows.add(new Cells()
                    .with("calibration", calibration.id())
                    .with("point_no", rows.size())
                    .with("reference_value", point.reference())
                    .with("reference_sd", point.referenceSd())
                    .with("indicated", point.indicated())
                    .with("indicated_sd", point.indicatedSd())
                    .with("source", point.source()));
        }
        Rows.insert(handle, "calibration_point", rows);
    }

    private static List<CalibrationPoint> points(Handle handle, UUID calibration) {
        return handle.createQuery("select * from calibration_point where calibration = :id order by point_no")
                .bind("id", calibration)
                .map(POINT.mapper())
                .list();
    }
}
