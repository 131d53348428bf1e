package org.moultwright.store.sql;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;

/** One row as it was read. A cell whose value nobody can read is named in the refusal. */
public record Row(ResultSet cells) {

    public String text(String column) throws SQLException {
        return cells.getString(column);
    }

    public Optional<String> optionalText(String column) throws SQLException {
        return Optional.ofNullable(cells.getString(column));
    }

    public int count(String column) throws SQLException {
        return cells.getInt(column);
    }

    public boolean flag(String column) throws SQLException {
        return cells.getBoolean(column);
    }

    public long number(String column) throws SQLException {
        return cells.getLong(column);
    }

    /** A measured or chosen number, NaN where there is none. */
    public double measure(String column) throws SQLException {
        double value = cells.getDouble(column);
        return cells.wasNull() ? Double.NaN : value;
    }

    public Instant instant(String column) throws SQLException {
        return cells.getObject(column, OffsetDateTime.class).toInstant();
    }

    public Optional<Instant> optionalInstant(String column) throws SQLException {
        return Optional.ofNullable(cells.getObject(column, OffsetDateTime.class))
                .map(OffsetDateTime::toInstant);
    }

    public UUID id(String column) throws SQLException {
        return cells.getObject(column, UUID.class);
    }

    public Optional<UUID> optionalId(String column) throws SQLException {
        return Optional.ofNullable(cells.getObject(column, UUID.class));
    }

    public byte[] bytes(String column) throws SQLException {
        return cells.getBytes(column);
    }

    public Optional<byte[]> optionalBytes(String column) throws SQLException {
        return Optional.ofNullable(cells.getBytes(column));
    }

    /** The value stored by this key. */
    public <E> E keyed(String column, Function<String, Optional<E>> fromKey) throws SQLException {
        String key = text(column);
        return fromKey.apply(key)
                .orElseThrow(() -> new IllegalArgumentException(column + " is '" + key + "', which is not known"));
    }
}
