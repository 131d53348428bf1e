package org.moultwright.store.climate;

import java.time.Instant;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmTurn;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;
import org.moultwright.store.sql.Transactions;
import org.moultwright.workflow.AlarmJournal;

/** The journal of alarms in H2. */
public final class H2AlarmJournal implements AlarmJournal {
    private static final RowReader<AlarmEntry> ENTRY = row -> new AlarmEntry(
            row.id("id"),
            row.instant("happened_at"),
            row.text("container"),
            row.keyed("kind", AlarmKind::fromKey),
            row.keyed("turn", AlarmTurn::fromKey),
            row.measure("measured"),
            row.optionalInstant("quiet_until"));

    private final Transactions transactions;

    public H2AlarmJournal(Transactions transactions) {
        this.transactions = transactions;
    }

    @Override
    public void append(List<AlarmEntry> entries) {
        transactions.write(handle -> {
            List<Cells> missing = entries.stream()
                    .filter(entry -> !isThere(handle, entry))
                    .map(H2AlarmJournal::cells)
                    .toList();
            Rows.insert(handle, "alarm_entry", missing);
            return missing;
        });
    }

    @Override
    public List<AlarmEntry> between(Instant from, Instant to) {
        return select(
                "happened_at >= :from_at and happened_at < :to_at",
                new Cells().with("from_at", from).with("to_at", to));
    }

    @Override
    public List<AlarmEntry> of(String container) {
        return select("container = :container", new Cells().with("container", container));
    }

    static List<AlarmEntry> all(Handle handle) {
        return select(handle, "true", new Cells());
    }

    private List<AlarmEntry> select(String condition, Cells parameters) {
        return transactions.read(handle -> select(handle, condition, parameters));
    }

    private static List<AlarmEntry> select(Handle handle, String condition, Cells parameters) {
        try (var query = handle.createQuery("select * from alarm_entry where " + condition + " order by row_no")) {
            parameters.bindTo(query);
            return query.map(ENTRY.mapper()).list();
        }
    }

    private static boolean isThere(Handle handle, AlarmEntry entry) {
        return !select(handle, "id = :id", new Cells().with("id", entry.id())).isEmpty();
    }

    private static Cells cells(AlarmEntry entry) {
        return new Cells()
                .with("id", entry.id())
                .with("happened_at", entry.at())
                .with("container", entry.container())
                .with("kind", entry.kind().key())
                .with("turn", entry.turn().key())
                .withNumber("measured", entry.value())
                .with("quiet_until", entry.quietUntil());
    }
}
