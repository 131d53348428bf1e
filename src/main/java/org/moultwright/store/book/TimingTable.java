package org.moultwright.store.book;

import java.sql.SQLException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Timing;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.Row;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;

/** What is believed of the timing of broods. */
final class TimingTable {
    private static final RowReader<RateForm.Point> POINT =
            row -> new RateForm.Point(row.measure("temperature_celsius"), row.measure("rate"));

    void insert(Handle handle, String brood, Timing timing) {
        Cells cells = new Cells()
                .with("brood", brood)
                .with("batch_sd", timing.batchSd())
                .with("rate_form", timing.rate().key());
        Rows.insert(handle, "timing", List.of(withRate(cells, timing.rate())));
        Rows.insert(
                handle,
                "timing_median",
                timing.medianWarmDays().entrySet().stream()
                        .map(median -> new Cells()
                                .with("brood", brood)
                                .with("stage", median.getKey().key())
                                .with("warm_days", median.getValue()))
                        .toList());
        if (timing.rate() instanceof RateForm.Table table) {
            Rows.insert(
                    handle,
                    "timing_rate_point",
                    table.points().stream()
                            .map(point -> new Cells()
                                    .with("brood", brood)
                                    .with("temperature_celsius", point.temperatureCelsius())
                                    .with("rate", point.rate()))
                            .toList());
        }
    }

    Optional<Timing> find(Handle handle, String brood) {
        RowReader<Timing> reader =
                row -> new Timing(medians(handle, brood), row.measure("batch_sd"), rate(handle, brood, row));
        return handle.createQuery("select * from timing where brood = :brood")
                .bind("brood", brood)
                .map(reader.mapper())
                .findFirst();
    }

    private static Cells withRate(Cells cells, RateForm rate) {
        if (rate instanceof RateForm.Linear linear) {
            return cells.with("lower_celsius", linear.lowerCelsius());
        }
        if (rate instanceof RateForm.Briere1 briere) {
            return cells.with("lower_celsius", briere.lowerCelsius()).with("upper_celsius", briere.upperCelsius());
        }
        if (rate instanceof RateForm.Lactin2 lactin) {
            return cells.with("rho", lactin.rho())
                    .with("maximum_celsius", lactin.maximumCelsius())
                    .with("delta_celsius", lactin.deltaCelsius())
                    .with("lambda", lactin.lambda());
        }
        return cells;
    }

    private static RateForm rate(Handle handle, String brood, Row row) throws SQLException {
        String form = row.text("rate_form");
        return switch (form) {
            case "linear" -> new RateForm.Linear(row.measure("lower_celsius"));
            case "briere1" -> new RateForm.Briere1(row.measure("lower_celsius"), row.measure("upper_celsius"));
            case "lactin2" ->
                new RateForm.Lactin2(
                        row.measure("rho"),
                        row.measure("maximum_celsius"),
                        row.measure("delta_celsius"),
                        row.measure("lambda"));
            case "table" -> new RateForm.Table(points(handle, brood));
            default -> throw new IllegalArgumentException("rate_form is '" + form + "', which is not known");
        };
    }

    private static Map<Stage, Double> medians(Handle handle, String brood) {
        Map<Stage, Double> medians = new EnumMap<>(Stage.class);
        RowReader<Stage> reader = row -> {
            Stage stage = row.keyed("stage", Stage::fromKey);
            medians.put(stage, row.measure("warm_days"));
            return stage;
        };
        handle.createQuery("select * from timing_median where brood = :brood")
                .bind("brood", brood)
                .map(reader.mapper())
                .list();
        return medians;
    }

    private static List<RateForm.Point> points(Handle handle, String brood) {
        return handle.createQuery("select * from timing_rate_point where brood = :brood order by temperature_celsius")
                .bind("brood", brood)
                .map(POINT.mapper())
                .list();
    }
}
