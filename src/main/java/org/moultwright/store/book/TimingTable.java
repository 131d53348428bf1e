package org.moultwright.store.book;

import java.sql.SQLException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Timing;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.Row;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;

/** What is believed of timings, each owned by a row of another table. */
final class TimingTable {
    private static final RowReader<RateForm.Point> POINT =
            row -> new RateForm.Point(row.measure("temperature_celsius"), row.measure("rate"));

    private final String name;
    private final String key;

    /**
     * @param name of the table; medians and points of rates stand in others named after it
     * @param key the column that says whose timing a row is
     */
    TimingTable(String name, String key) {
        this.name = name;
        this.key = key;
    }

    void insert(Handle handle, Object owner, Timing timing) {
        Cells cells = new Cells()
                .with(key, owner)
                .with("batch_sd", timing.batchSd())
                .with("rate_form", timing.rate().key());
        Rows.insert(handle, name, List.of(withRate(cells, timing.rate())));
        Rows.insert(
                handle,
                name + "_median",
                timing.medianWarmDays().entrySet().stream()
                        .map(median -> new Cells()
                                .with(key, owner)
                                .with("stage", median.getKey().key())
                                .with("warm_days", median.getValue()))
                        .toList());
        if (timing.rate() instanceof RateForm.Table table) {
            Rows.insert(
                    handle,
                    name + "_rate_point",
                    table.points().stream()
                            .map(point -> new Cells()
                                    .with(key, owner)
                                    .with("temperature_celsius", point.temperatureCelsius())
                                    .with("rate", point.rate()))
                            .toList());
        }
    }

    Optional<Timing> find(Handle handle, Object owner) {
        RowReader<Timing> reader =
                row -> new Timing(medians(handle, owner), row.measure("batch_sd"), rate(handle, owner, row));
        return select(handle, "", owner).map(reader.mapper()).findFirst();
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

    private RateForm rate(Handle handle, Object owner, Row row) throws SQLException {
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
            case "table" -> new RateForm.Table(points(handle, owner));
            default -> throw new IllegalArgumentException("rate_form is '" + form + "', which is not known");
        };
    }

    private Map<Stage, Double> medians(Handle handle, Object owner) {
        Map<Stage, Double> medians = new EnumMap<>(Stage.class);
        RowReader<Stage> reader = row -> {
            Stage stage = row.keyed("stage", Stage::fromKey);
            medians.put(stage, row.measure("warm_days"));
            return stage;
        };
        select(handle, "_median", owner).map(reader.mapper()).list();
        return medians;
    }

    private List<RateForm.Point> points(Handle handle, Object owner) {
        return select(handle, "_rate_point", owner).map(POINT.mapper()).list();
    }

    private Query select(Handle handle, String suffix, Object owner) {
        return handle.createQuery("select * from " + name + suffix + " where " + key + " = :owner"
                        + (suffix.equals("_rate_point") ? " order by temperature_celsius" : ""))
                .bind("owner", owner);
    }
}
