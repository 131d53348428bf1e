package org.moultwright.benchmark;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.function.LongFunction;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.workflow.ReadingLog.Logged;

/** What there would be without any of our own: one H2 table, one row a reading, batched inserts. */
final class PlainTable implements AutoCloseable {
    private static final int BATCH = 1000;

    private final Connection connection;

    PlainTable(Path file) throws SQLException {
        this.connection = DriverManager.getConnection("jdbc:h2:" + file);
        try (Statement statement = connection.createStatement()) {
            statement.execute("create table if not exists reading (probe_no integer, taken_at_millis bigint,"
                    + " temperature double precision, humidity double precision, quality varchar, primary key"
                    + " (probe_no, taken_at_millis))");
        }
        connection.setAutoCommit(false);
    }

    void insert(int probe, long count, LongFunction<Reading> readings) {
        try (PreparedStatement insert = connection.prepareStatement("insert into reading values (?, ?, ?, ?, ?)")) {
            for (long i = 0; i < count; i++) {
                Reading reading = readings.apply(i);
                insert.setInt(1, probe);
                insert.setLong(2, reading.takenAt().toEpochMilli());
                insert.setDouble(3, reading.temperatureCelsius());
                insert.setDouble(4, reading.humidityPercent());
                insert.setString(5, reading.quality().key());
                insert.addBatch();
                if ((i + 1) % BATCH == 0 || i + 1 == count) {
                    insert.executeBatch();
                }
            }
            connection.commit();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** As a logger would: a row a reading, forced to disk before any is acknowledged. */
    List<Logged> append(String probe, List<Logged> readings) {
        insert(1, readings.size(), number -> readings.get((int) number).reading());
        try (Statement statement = connection.createStatement()) {
            statement.execute("checkpoint sync");
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return readings;
    }

    ReadingSeries series(int probe, long fromMillis, long toMillis) {
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        try (PreparedStatement select =
                connection.prepareStatement("select taken_at_millis, temperature, humidity, quality from reading where"
                        + " probe_no = ? and taken_at_millis >= ? and taken_at_millis < ? order by probe_no,"
                        + " taken_at_millis")) {
            select.setInt(1, probe);
            select.setLong(2, fromMillis);
            select.setLong(3, toMillis);
            ResultSet rows = select.executeQuery();
            while (rows.next()) {
                series.add(
                        rows.getLong(1),
                        rows.getDouble(2),
                        rows.getDouble(3),
                        Quality.fromKey(rows.getString(4)).orElseThrow());
            }
            return series.build();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
