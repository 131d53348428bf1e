package org.moultwright.store.book;

import java.sql.SQLException;
import java.util.Optional;
import org.moultwright.domain.Look;
import org.moultwright.store.sql.Row;

/** How a look at one stage stands in its row. */
final class LookCells {
    private LookCells() {}

    static Optional<Integer> animals(Look look) {
        if (look instanceof Look.Full full) {
            return Optional.of(full.count());
        }
        return look instanceof Look.Sample sample ? Optional.of(sample.count()) : Optional.empty();
    }

    static Optional<Integer> lookedAt(Look look) {
        return look instanceof Look.Sample sample ? Optional.of(sample.of()) : Optional.empty();
    }

    static Look read(Row row) throws SQLException {
        String how = row.text("how");
        return switch (how) {
            case "full" -> new Look.Full(row.count("animals"));
            case "sample" -> new Look.Sample(row.count("animals"), row.count("looked_at"));
            case "seen" -> new Look.Seen();
            case "none" -> new Look.None();
            default -> throw new IllegalArgumentException("how is '" + how + "', which is not known");
        };
    }
}
