package org.moultwright.store.sql;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.argument.Argument;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jspecify.annotations.Nullable;

/** The cells of one row to be written, by column. Not safe to share. */
public final class Cells {
    private final Map<String, @Nullable Object> values = new LinkedHashMap<>();

    public Cells with(String column, Object value) {
        values.put(column, value instanceof Instant instant ? instant.atOffset(ZoneOffset.UTC) : value);
        return this;
    }

    /** A cell that is null where there is no value. */
    public Cells with(String column, Optional<?> value) {
        if (value.isPresent()) {
            return with(column, value.get());
        }
        values.put(column, null);
        return this;
    }

    /** A number's cell that is null where it is not a number. */
    public Cells withNumber(String column, double value) {
        return with(column, Double.isNaN(value) ? Optional.empty() : Optional.of(value));
    }

    public Set<String> columns() {
        return values.keySet();
    }

    /** Binds every cell to the parameter named as its column. */
    public void bindTo(SqlStatement<?> statement) {
        values.forEach((column, value) -> {
            Argument argument = (position, prepared, context) -> prepared.setObject(position, value);
            statement.bind(column, argument);
        });
    }
}
