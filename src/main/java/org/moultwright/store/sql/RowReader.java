package org.moultwright.store.sql;

import java.sql.SQLException;
import org.jdbi.v3.core.mapper.RowMapper;

/** Makes a value of a row. */
@FunctionalInterface
public interface RowReader<T> {
    T read(Row row) throws SQLException;

    default RowMapper<T> mapper() {
        return (cells, context) -> read(new Row(cells));
    }
}
