package org.moultwright.benchmark;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BiConsumer;
import org.h2.mvstore.MVStoreTool;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.store.H2Store;
import org.moultwright.ui.chart.TraceWindow;
import org.moultwright.workflow.AdvisedException;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.LogListener;
import org.moultwright.workflow.LogReadings;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.TraceReadings;

/**
 * The whole record in one run: years of probes taken in, opened, drawn over every window, and logging at a rate
 * no incubator has; beside it a plain table of rows, filled with the beginning of the same readings.
 *
 * <p>Arguments: days (1826), seconds of logging (30; 600 for the full run, 0 for none), rows of the plain table
 * (2000000; all would take half an hour and ten gigabytes), and a folder to keep the record in: where one is there
 * already it is opened and looked at again and nothing is taken in. Painting needs no display. Other work on the machine shows: the load is
 * printed.
 */
public final class RecordBenchmark {
    private static final Instant START = Instant.parse("2021-01-01T00:00:00Z");
    private static final int PROBES = 4;
    private static final long MILLIS_APART = 10_000;
    private static final double JITTER_MILLIS = 4;
    private static final int OPENINGS = 7;
    private static final int LOOKS = 9;
    private static final int READINGS_A_SECOND = 1000;
    private static final int MOST_PLAIN_SECONDS = 60;
    private static final int RAW_DAYS = 20;
    private static final double WIDTH_PIXELS = 1600;

    private final InventedAir air = new InventedAir(START, MILLIS_APART, JITTER_MILLIS);
    private final SplittableRandom random = new SplittableRandom(1);
    private final Path folder;
    private final int days;
    private final long readingsAProbe;

    private RecordBenchmark(Path folder, int days) {
        this.folder = folder;
        this.days = days;
        this.readingsAProbe = Duration.ofDays(days).toMillis() / MILLIS_APART;
    }

    public static void main(String[] arguments) throws IOException, SQLException {
        int days = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1826;
        int seconds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 30;
        long plainRows = arguments.length > 2 ? Long.parseLong(arguments[2]) : 2_000_000;
        Path folder = arguments.length > 3
                ? Files.createDirectories(Path.of(arguments[3]))
                : Files.createTempDirectory("record");
        new RecordBenchmark(folder, days).run(seconds, plainRows);
        System.exit(0);
    }

    private void run(int seconds, long plainRows) throws IOException, SQLException {
        long all = PROBES * readingsAProbe;
        System.out.printf("%d probes at %d s for %d days: %,d readings%n", PROBES, MILLIS_APART / 1000, days, all);
        long inPlain = Math.min(readingsAProbe, plainRows);
        System.out.printf(
                "plain table: %,d rows, the beginning of one probe; %d cores, load %.1f%n",
                inPlain,
                Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        Path store = folder.resolve("room.store");
        Path plain = folder.resolve("plain");
        if (!Files.exists(store)) {
            fill(store, plain, inPlain);
        }
        open(store, plain);
        windows(store, plain, inPlain);
        if (seconds > 0) {
            double ours = log(seconds);
            told("of one core, logging", 100 * ours, "%", 100 * logPlainly(Math.min(seconds, MOST_PLAIN_SECONDS)));
        }
    }

    private void fill(Path store, Path plain, long inPlain) throws IOException, SQLException {
        long all = PROBES * readingsAProbe;
        double ours = timed(() -> takeIn(store));
        try (PlainTable table = new PlainTable(plain)) {
            double plains = timed(() -> table.insert(1, inPlain, number -> air.reading(1, number)));
            told("import", all / ours, "rows/s", inPlain / plains);
        }
        told(
                "file, no raw lines",
                bytesEach(store, all),
                "B/reading",
                bytesEach(folder.resolve("plain.mv.db"), inPlain));
        told(
                "in use, no raw lines",
                inUseBytes(store) / (double) all,
                "B/reading",
                inUseBytes(folder.resolve("plain.mv.db")) / (double) inPlain);
        raw();
    }

    private void takeIn(Path file) {
        try (H2Store store = H2Store.open(file)) {
            for (int probe = 0; probe < PROBES; probe++) {
                int number = probe;
                store.book().takeIn(BroodRecord.of(InventedBrood.brood("BB-26-A")), sink -> handOver(number, sink));
            }
        }
    }

    private void handOver(int probe, BiConsumer<String, Reading> sink) {
        for (long number = 0; number < readingsAProbe; number++) {
            sink.accept("P-" + probe, air.reading(probe, number));
        }
    }

    /** As logged: with its raw lines, hour by hour. */
    private void raw() throws IOException {
        Path file = folder.resolve("raw.store");
        long readings = 0;
        try (H2Store store = H2Store.open(file)) {
            for (int hour = 0; hour < RAW_DAYS * 24; hour++) {
                for (int probe = 0; probe < PROBES; probe++) {
                    List<Logged> ofHour = new ArrayList<>();
                    for (long number = hour * 360L; number < (hour + 1) * 360L; number++) {
                        Reading reading = air.reading(probe, number);
                        ofHour.add(new Logged(reading, InventedAir.rawLine(reading)));
                    }
                    store.readings().append("P-" + probe, ofHour);
                    readings += ofHour.size();
                }
            }
        }
        System.out.printf(
                "%-26s %,12.2f B/reading (%d days; an empty store's left out)%n",
                "in use, with raw lines", (inUseBytes(file) - inUseBytes(empty())) / (double) readings, RAW_DAYS);
    }

    private void open(Path store, Path plain) {
        Path empty = empty();
        Stopwatch ofEmpty = new Stopwatch();
        Stopwatch ofFull = new Stopwatch();
        Stopwatch ofPlain = new Stopwatch();
        for (int opening = 0; opening < OPENINGS; opening++) {
            ofEmpty.time(() -> H2Store.open(empty).close());
            ofFull.time(() -> H2Store.open(store).close());
            ofPlain.time(() -> openPlainly(plain));
        }
        System.out.printf(
                "%-26s median %.2f s, empty %.2f s: %.2f s more; plain %.2f, ratio %.2f%n",
                "open and close",
                ofFull.median(),
                ofEmpty.median(),
                ofFull.median() - ofEmpty.median(),
                ofPlain.median(),
                ofFull.median() / ofPlain.median());
    }

    private static void openPlainly(Path plain) {
        try {
            new PlainTable(plain).close();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private void windows(Path file, Path plain, long inPlain) throws SQLException {
        TracePaint paint = new TracePaint(WIDTH_PIXELS);
        try (H2Store store = H2Store.open(file);
                PlainTable table = new PlainTable(plain)) {
            lengths().forEach((words, length) -> {
                Stopwatch data = new Stopwatch();
                Stopwatch painted = new Stopwatch();
                Stopwatch plainData = new Stopwatch();
                long columns = 0;
                for (int look = 0; look < LOOKS + 1; look++) {
                    Instant to = START.plusMillis(length.toMillis()
                            + random.nextLong(Math.max(1, Duration.ofDays(days).toMillis() - length.toMillis())));
                    String probe = "P-" + look % PROBES;
                    long began = System.nanoTime();
                    TraceWindow window = new TraceWindow(to.minus(length), to);
                    TraceReadings read =
                            TraceReadings.of(store.readings(), probe, window.from(), window.to(), WIDTH_PIXELS);
                    double dataSeconds = (System.nanoTime() - began) / 1e9;
                    double paintSeconds = paint.secondsFor(read, window);
                    columns = read.rollUps().size();
                    if (look > 0) {
                        data.add(dataSeconds);
                        painted.add(paintSeconds);
                    }
                }
                boolean isInPlain = length.toMillis() < inPlain * MILLIS_APART;
                if (isInPlain) {
                    for (int look = 0; look < 3; look++) {
                        long from = START.toEpochMilli() + random.nextLong(inPlain * MILLIS_APART - length.toMillis());
                        plainData.time(() -> {
                            ReadingSeries found = table.series(1, from, from + length.toMillis());
                            if (found.size() > length.toMillis() / MILLIS_APART + 2) {
                                throw new IllegalStateException("too many");
                            }
                        });
                    }
                }
                System.out.printf(
                        "window of %-10s data %6.1f ms (%.1f to %.1f), paint %6.1f ms (%.1f to %.1f), %,d"
                                + " roll-ups; plain data %s%n",
                        words,
                        1000 * data.median(),
                        1000 * data.shortest(),
                        1000 * data.longest(),
                        1000 * painted.median(),
                        1000 * painted.shortest(),
                        1000 * painted.longest(),
                        columns,
                        isInPlain
                                ? "%.1f ms, %.1f times as long"
                                        .formatted(1000 * plainData.median(), plainData.median() / data.median())
                                : "not that long");
            });
        }
    }

    /** The share of a core that logging takes. */
    private double log(int seconds) {
        SteadyLines lines = new SteadyLines(READINGS_A_SECOND);
        AtomicLong acknowledged = new AtomicLong();
        OperatingSystemMXBean machine = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
        try (H2Store store = H2Store.open(folder.resolve("log.store"))) {
            LogReadings log = new LogReadings(store.readings(), "P-1", new Counting(acknowledged));
            long cpu = machine.getProcessCpuTime();
            double wall = timed(
                    () -> log.run(lines, new ProbeLine("none", "none"), Optional.of(Duration.ofSeconds(seconds))));
            double share = (machine.getProcessCpuTime() - cpu) / 1e9 / wall;
            long kept = store.readings()
                    .series("P-1", Instant.EPOCH, Instant.now().plusSeconds(86_400))
                    .size();
            System.out.printf(
                    "logging %,d readings/s for %.0f s: said %,d, acknowledged %,d, kept %,d; %.1f %% of one core%n",
                    READINGS_A_SECOND, wall, lines.said(), acknowledged.get(), kept, 100 * share);
            return share;
        }
    }

    /** The same lines through the same queue into a plain table, forced to disk as often. */
    private double logPlainly(int seconds) throws SQLException {
        OperatingSystemMXBean machine = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
        AtomicLong acknowledged = new AtomicLong();
        try (PlainTable table = new PlainTable(folder.resolve("plain-log"))) {
            LogReadings log = new LogReadings(table::append, "P-1", new Counting(acknowledged));
            long cpu = machine.getProcessCpuTime();
            double wall = timed(() -> log.run(
                    new SteadyLines(READINGS_A_SECOND),
                    new ProbeLine("none", "none"),
                    Optional.of(Duration.ofSeconds(seconds))));
            return (machine.getProcessCpuTime() - cpu) / 1e9 / wall;
        }
    }

    private Path empty() {
        Path empty = folder.resolve("empty.store");
        H2Store.open(empty).close();
        return empty;
    }

    private Map<String, Duration> lengths() {
        Map<String, Duration> lengths = new LinkedHashMap<>();
        lengths.put("a minute", Duration.ofMinutes(1));
        lengths.put("an hour", Duration.ofHours(1));
        lengths.put("a day", Duration.ofDays(1));
        lengths.put("5 days", Duration.ofDays(5));
        lengths.put("a week", Duration.ofDays(7));
        lengths.put("16 days", Duration.ofDays(16));
        lengths.put("a month", Duration.ofDays(30));
        lengths.put("66 days", Duration.ofDays(66));
        lengths.put("a year", Duration.ofDays(365));
        lengths.put("17 months", Duration.ofDays(530));
        lengths.put("4 years", Duration.ofDays(1590));
        lengths.put("all", Duration.ofDays(days - 1));
        lengths.values().removeIf(length -> length.toDays() >= days);
        return lengths;
    }

    private static double bytesEach(Path file, long readings) throws IOException {
        return Files.size(file) / (double) readings;
    }

    /** The size of a copy without the room that is free for later readings. */
    private static long inUseBytes(Path file) throws IOException {
        Path copy = Files.copy(file, file.resolveSibling("copy"), StandardCopyOption.REPLACE_EXISTING);
        MVStoreTool.compact(copy.toString(), false);
        return Files.size(copy);
    }

    private static void told(String what, double ours, String unit, double plain) {
        System.out.printf("%-26s %,12.2f %s; plain %,12.2f; ratio %.2f%n", what, ours, unit, plain, ours / plain);
    }

    private static double timed(Runnable work) {
        Stopwatch watch = new Stopwatch();
        watch.time(work);
        return watch.median();
    }

    private record Counting(AtomicLong acknowledged) implements LogListener {
        @Override
        public void heard(Logged logged) {
            acknowledged.incrementAndGet();
        }

        @Override
        public void changed(LinkState state) {}

        @Override
        public void clockStepped(Instant seenAt, Duration by) {}

        @Override
        public void notKept(AdvisedException fault) {
            throw fault;
        }

        @Override
        public void keptAgain(int waited) {}

        @Override
        public void lost(int readings) {
            throw new IllegalStateException(readings + " readings lost");
        }
    }
}
