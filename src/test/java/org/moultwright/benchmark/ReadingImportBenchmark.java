package org.moultwright.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.ReadingLog.Logged;

/**
 * How fast a million readings are taken in through the port, in one transaction, against plain batched
 * inserts of the same readings into a table of rows of another H2 file in the same run.
 *
 * <p>Arguments: readings (1000000), runs (3). Run with a small heap, such as {@code -Xmx128m}, to see that
 * memory is bounded.
 */
public final class ReadingImportBenchmark {
    private static final Instant START = Instant.parse("2026-01-01T00:00:00Z");
    private static final int SECONDS_A_READING = 10;
    private static final int BATCH = 1000;

    private final int readings;
    private final int runs;

    private ReadingImportBenchmark(int readings, int runs) {
        this.readings = readings;
        this.runs = runs;
    }

    public static void main(String[] arguments) throws IOException, SQLException {
        int readings = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000_000;
        int runs = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 3;
        new ReadingImportBenchmark(readings, runs).run();
    }

    private void run() throws IOException, SQLException {
        Stopwatch port = new Stopwatch();
        Stopwatch plain = new Stopwatch();
        Stopwatch reading = new Stopwatch();
        Stopwatch batches = new Stopwatch();
        for (int run = 0; run < runs; run++) {
            Path folder = Files.createTempDirectory("readings");
            Path file = folder.resolve("room.store");
            try (H2Store store = H2Store.open(file)) {
                port.time(() -> takeIn(store));
                reading.time(() -> readBack(store));
                batches.time(() -> append(store));
            }
            plain.time(() -> insertPlainly(folder.resolve("plain")));
            System.out.printf(
                    "run %d: store %.1f MB, plain table %.1f MB%n",
                    run + 1, megabytes(file), megabytes(folder.resolve("plain.mv.db")));
        }
        report("import through the port, one transaction", port);
        report("append through the port, batches of " + BATCH + ", each on disk", batches);
        report("plain batched inserts, batches of " + BATCH, plain);
        report("series of all readings", reading);
        System.out.printf("import is %.2f times as fast as plain inserts%n", plain.median() / port.median());
    }

    private void takeIn(H2Store store) {
        store.book().takeIn(BroodRecord.of(InventedBrood.brood("BB-26-A")), this::handOver);
    }

    private void handOver(BiConsumer<String, Reading> sink) {
        for (int i = 0; i < readings; i++) {
            sink.accept("P-1", reading(i));
        }
    }

    private void append(H2Store store) {
        List<Logged> batch = new ArrayList<>();
        for (int i = 0; i < readings; i++) {
            batch.add(new Logged(reading(i), ""));
            if (batch.size() == BATCH || i + 1 == readings) {
                store.readings().append("P-2", batch);
                batch = new ArrayList<>();
            }
        }
    }

    private void readBack(H2Store store) {
        ReadingSeries series = store.readings().series("P-1", START, START.plus(Duration.ofDays(36_500)));
        if (series.size() != readings) {
            throw new IllegalStateException(series.size() + " readings came back, not " + readings);
        }
    }

    private void insertPlainly(Path file) {
        try (Connection connection = DriverManager.getConnection("jdbc:h2:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("create table reading (probe_no integer, taken_at_millis bigint, temperature double"
                    + " precision, humidity double precision, quality varchar, primary key (probe_no,"
                    + " taken_at_millis))");
            connection.setAutoCommit(false);
            try (PreparedStatement insert = connection.prepareStatement("insert into reading values (1, ?, ?, ?, ?)")) {
                for (int i = 0; i < readings; i++) {
                    Reading reading = reading(i);
                    insert.setLong(1, reading.takenAt().toEpochMilli());
                    insert.setDouble(2, reading.temperatureCelsius());
                    insert.setDouble(3, reading.humidityPercent());
                    insert.setString(4, reading.quality().key());
                    insert.addBatch();
                    if ((i + 1) % BATCH == 0 || i + 1 == readings) {
                        insert.executeBatch();
                    }
                }
            }
            connection.commit();
            statement.execute("checkpoint sync");
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Reading reading(int i) {
        double temperature = Math.round(2700 + 40 * Math.sin(i / 1400.0) + 7 * Math.sin(i * 0.7)) / 100.0;
        double humidity = Math.round(720 + 50 * Math.sin(i / 3000.0) + 6 * Math.cos(i * 1.3)) / 10.0;
        return new Reading(START.plusSeconds((long) i * SECONDS_A_READING), temperature, humidity, Quality.GOOD);
    }

    private void report(String what, Stopwatch seconds) {
        System.out.printf(
                "%-55s median %6.2f s, %,.0f readings/s%n", what, seconds.median(), readings / seconds.median());
    }

    private static double megabytes(Path file) throws IOException {
        return Files.size(file) / 1e6;
    }
}
