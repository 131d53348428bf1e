package org.moultwright.store.forecast;

import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Stage;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;
import org.moultwright.store.sql.Transactions;
import org.moultwright.workflow.ForecastArchive;
import org.moultwright.workflow.MadeForecast;

/** The archive of forecasts in H2. */
public final class H2ForecastArchive implements ForecastArchive {
    private static final RowReader<MadeForecast.Event> EVENT = row -> new MadeForecast.Event(
            row.text("tray"),
            row.keyed("stage", Stage::fromKey),
            row.text("milestone"),
            instants(row.cells().getBytes("twentieths")));

    /** A code may have belonged to a brood whose beginning was undone: what was said of that one is of no other. */
    private static final String OF_THIS_BROOD = """
            brood = :brood and not exists (
                select 1 from brood join deed on deed.id = brood.begun_by
                where brood.code = :brood and deed.done_at > forecast_made.as_of)""";

    private final Transactions transactions;

    public H2ForecastArchive(Transactions transactions) {
        this.transactions = transactions;
    }

    @Override
    public void keep(MadeForecast forecast) {
        transactions.write(handle -> {
            Cells id = new Cells().with("id", forecast.id());
            if (made(handle, "id = :id", id).isEmpty()) {
                Rows.insert(handle, "forecast_made", List.of(cells(forecast)));
                Rows.insert(
                        handle,
                        "forecast_event",
                        forecast.events().stream()
                                .map(event -> cells(forecast.id(), event))
                                .toList());
            }
            return id;
        });
    }

    @Override
    public Optional<MadeForecast> latest(String brood) {
        return transactions.read(handle -> made(
                        handle,
                        "row_no = (select max(row_no) from forecast_made where " + OF_THIS_BROOD + ")",
                        new Cells().with("brood", brood))
                .stream()
                .findFirst());
    }

    @Override
    public List<MadeForecast> of(String brood) {
        return transactions.read(handle -> made(handle, OF_THIS_BROOD, new Cells().with("brood", brood)));
    }

    private static List<MadeForecast> made(Handle handle, String condition, Cells parameters) {
        RowReader<MadeForecast> reader = row -> new MadeForecast(
                row.id("id"),
                row.text("brood"),
                row.instant("as_of"),
                row.text("prior_from"),
                row.count("learned_broods"),
                row.count("checks"),
                events(handle, row.id("id")));
        try (var query = handle.createQuery("select * from forecast_made where " + condition + " order by row_no")) {
            parameters.bindTo(query);
            return query.map(reader.mapper()).list();
        }
    }

    private static List<MadeForecast.Event> events(Handle handle, UUID forecast) {
        try (var query =
                handle.createQuery("select * from forecast_event where forecast = :forecast order by row_no")) {
            new Cells().with("forecast", forecast).bindTo(query);
            return query.map(EVENT.mapper()).list();
        }
    }

    private static Cells cells(MadeForecast forecast) {
        return new Cells()
                .with("id", forecast.id())
                .with("brood", forecast.brood())
                .with("as_of", forecast.asOf())
                .with("prior_from", forecast.priorFrom())
                .with("learned_broods", forecast.learnedBroods())
                .with("checks", forecast.checks());
    }

    private static Cells cells(UUID forecast, MadeForecast.Event event) {
        return new Cells()
                .with("forecast", forecast)
                .with("tray", event.tray())
                .with("stage", event.into().key())
                .with("milestone", event.milestone())
                .with("twentieths", bytes(event.twentieths()));
    }

    private static byte[] bytes(List<Instant> instants) {
        ByteBuffer bytes = ByteBuffer.allocate(instants.size() * Long.BYTES);
        instants.forEach(instant -> bytes.putLong(instant.toEpochMilli()));
        return bytes.array();
    }

    private static List<Instant> instants(byte[] bytes) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        return IntStream.range(0, bytes.length / Long.BYTES)
                .mapToObj(i -> Instant.ofEpochMilli(buffer.getLong(i * Long.BYTES)))
                .toList();
    }
}
